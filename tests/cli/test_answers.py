# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the verbs that only read answer."""

import csv
import io
import subprocess
from datetime import date, timedelta

from documents import (BUILDER, BURR, LEFT_SKIN, LEFT_WING, LOOSE_WIRE, OVERDRIVEN, RIB,
                       RIGHT_SKIN, RIGHT_WING, RIVET_RIBS, SCRATCH, bench)
from terminal import TerminalTest


class Ready(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def test_json_names_the_blockers_of_each_closing(self):
        answer = self.ask("ready", self.project, "--as-of", "2026-03-14", "--json").json()
        self.assertEqual((answer["as_of"], answer["profile"]), ("2026-03-14", "plain"))
        left, right = answer["closings"]
        self.assertEqual((left["id"], left["state"]), (LEFT_SKIN, "hold"))
        musts = {(b["rule"], b["record"], b["id"]) for b in left["blockers"]
                 if b["weight"] == "must"}
        self.assertEqual(musts, {("open-squawk", "squawk", OVERDRIVEN),
                                 ("undone-step", "step", RIVET_RIBS)})
        self.assertEqual((right["id"], right["state"]), (RIGHT_SKIN, "clear"))
        self.assertEqual(answer["workable"], [RIVET_RIBS])

    def test_as_of_an_earlier_day_sees_only_what_had_happened(self):
        answer = self.ask("ready", self.project, "--as-of", "2026-01-01", "--json").json()
        rules = {b["rule"] for b in answer["closings"][0]["blockers"]}
        self.assertNotIn("open-squawk", rules)

    def test_a_moment_with_a_time_is_taken(self):
        answer = self.ask("ready", self.project, "--as-of", "2026-01-02T09:00", "--json").json()
        self.assertEqual(answer["as_of"], "2026-01-02T09:00")

    def test_closing_filters_what_is_shown_and_nothing_else(self):
        every = self.ask("ready", self.project, "--as-of", "2026-03-14", "--json").json()
        one = self.ask("ready", self.project, "--as-of", "2026-03-14", "--closing", RIGHT_SKIN,
                       "--json").json()
        self.assertEqual([c["id"] for c in one["closings"]], [RIGHT_SKIN])
        for name in ("workable", "unlock", "last_chance", "components"):
            self.assertEqual(one[name], every[name])

    def test_strict_says_no_only_when_a_closing_asked_for_is_on_hold(self):
        self.assertEqual(self.run_program("ready", self.project, "--strict").code, 1)
        asked = ("ready", self.project, "--strict", "--closing")
        self.assertEqual(self.run_program(*asked, LEFT_SKIN, RIGHT_SKIN).code, 1)
        self.assertEqual(self.run_program(*asked, RIGHT_SKIN).code, 0)

    def test_what_another_program_spoiled_is_told_once(self):
        self.assertEqual(self.ask("ready", self.project).err, "")
        subprocess.run(["sqlite3", self.project / "records.db",
                        f"UPDATE step SET component_id = 12345 WHERE id = {RIVET_RIBS}"],
                       check=True, capture_output=True)
        answer = self.run_program("ready", self.project, "--json")
        self.assertEqual(answer.code, 0)
        line, = answer.err.splitlines()
        self.assertIn(f"step {RIVET_RIBS} names component 12345, which is not on record", line)
        self.assertIn("verify", line)
        answer.json()
        for verb in ("hours", "forecast", "squawks"):
            self.assertEqual(self.run_program(verb, self.project).err.splitlines(), [line])

    def test_a_part_that_was_put_into_itself_is_told(self):
        subprocess.run(["sqlite3", self.project / "records.db",
                        f"UPDATE component SET parent_id = id WHERE id = {LEFT_WING}"],
                       check=True, capture_output=True)
        answer = self.run_program("ready", self.project, "--json")
        self.assertEqual(answer.code, 0)
        line, = answer.err.splitlines()
        self.assertIn(f"component {LEFT_WING} lies inside itself", line)
        answer.json()

    def test_text_groups_by_state_and_names_blockers_and_cure(self):
        text = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertIn("as of 2026-03-14", text)
        self.assertIn("1 closing must stay open", text)
        self.assertIn("Left wing, lower skin", text)
        self.assertIn("Overdriven rivet", text)
        self.assertRegex(text, r"(?m)^Workable now \(1\)\n +Rivet the nose ribs")
        self.assertLess(text.index("Left wing, lower skin"), text.index("Right wing, lower skin"))
        self.assertNotRegex(text.lower(), r"\bsafe\b|\bok\b")

    def test_the_headline_counts_what_is_not_begun(self):
        self.assertNotIn("not begun", self.ask("ready", self.project).out)
        document = bench()
        document["components"].append({"id": 4, "code": "FI", "name": "Fin"})
        document["closings"].append(
            {"id": 22, "component_id": 4, "title": "Fin, right skin", "encloses": [4]})
        self.project = self.folder / "Fin.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project).out
        self.assertRegex(text, r"(?m)^1 is not begun\.$")
        self.assertRegex(text, r"(?m)^Not begun: no work on record in their reach \(1\)$")
        self.assertNotIn("not begun", self.ask("ready", self.project, "--closing", LEFT_SKIN).out)

    def test_text_about_chosen_closings_says_nothing_about_the_others(self):
        text = self.ask("ready", self.project, "--as-of", "2026-03-14", "--closing",
                        RIGHT_SKIN).out
        self.assertIn("Right wing, lower skin", text)
        self.assertNotIn("Left wing, lower skin", text)
        self.assertNotIn("must stay open", text)

    def test_a_closing_that_is_asked_for_is_told_with_everything(self):
        document = bench()
        document["steps"] += [{"id": 100 + i, "component_id": RIB, "title": f"Dimple {i}"}
                              for i in range(12)]
        self.project = self.folder / "Asked.lastrivet"
        self.make_project(document)
        every = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertRegex(every, r"(?m)^      and 1\d more$")
        asked = self.ask("ready", self.project, "--as-of", "2026-03-14", "--closing",
                         LEFT_SKIN).out
        self.assertNotIn(" more\n", asked)
        for i in range(12):
            self.assertIn(f"Dimple {i} in", asked)
        self.assertRegex(asked, r"(?m)^      On record: steps 14, log entries 2, squawks 1$")
        self.assertRegex(asked, r"(?m)^      Nothing on record of: photographs, deviations,")

    def test_what_the_maker_closed_without_a_paper_says_what_is_missing(self):
        document = bench()
        document["project"]["profile"] = "ca"
        document["closings"].append(
            {"id": 22, "component_id": 3, "title": "Header tank", "encloses": [3],
             "made_by": "factory", "events": [{"closed_on": "2025-01-01"}]})
        self.project = self.folder / "Factory.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project).out
        self.assertRegex(text, r"(?m)^Closed with gaps \(1\)\n  22  Header tank\n +The maker's"
                               r" document for it is not on record")

    def text_about_an_inherited_wing(self):
        document = bench()
        document["project"]["profile"] = "us"
        document["components"].append(
            {"id": 4, "code": "FI", "name": "Fin", "kind": "lifting_surface"})
        document["closings"].append(
            {"id": 22, "component_id": RIGHT_WING, "title": "Tip", "encloses": [RIGHT_WING],
             "made_by": "earlier_builder", "events": [{"closed_on": "2026-03-01"}]})
        document["hold_points"] = [
            {"id": 60, "closing_id": LEFT_SKIN, "kind": "technical_visit",
             "signer_role": "adviser", "required": False}]
        self.project = self.folder / "Inherited.lastrivet"
        self.make_project(document)
        return self.ask("ready", self.project, "--as-of", "2026-03-14").out

    def test_what_an_earlier_builder_closed_is_for_the_inspector_to_decide(self):
        self.assertRegex(self.text_about_an_inherited_wing(),
                         r"(?m)^  22  Tip\n      Closed before these records began; the inspector"
                         r" decides\n      Squawk 4, ")

    def test_what_was_closed_with_gaps_says_when_and_what_alone_clears_it(self):
        document = bench()
        document["closings"][0]["events"] = [{"closed_on": "2026-03-01", "by": BUILDER}]
        self.project = self.folder / "Gaps.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertRegex(text, r"(?m)^1 was closed with gaps\.$")
        self.assertRegex(text, r"(?m)^  20  Left wing, lower skin\n"
                               r"      Closed on 2026-03-01; missing on that day:$")
        # What is done now does not bring back what was missing then.
        self.assertIn("Overdriven rivet in LW-R1: open\n", text)
        self.assertIn("      To clear it: have the builder, the adviser or the inspector accept it"
                      " late, or open it again\n", text)

    def test_what_is_advised_before_a_closing_is_told_as_advice(self):
        document = bench()
        document["closings"][1]["permanent"] = True
        document["squawks"] = []
        self.project = self.folder / "Advice.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertRegex(text, r"(?m)^Before it is out of reach \(1\)\n"
                               r"  Too few photographs of the inside\n"
                               r"      before closing: Right wing, lower skin \(21\)$")

    def test_a_box_inside_that_is_open_is_advised_as_that_and_not_by_what_it_lacks_itself(self):
        document = bench()
        document["components"].append({"id": 4, "parent_id": RIGHT_WING, "name": "Tank"})
        document["closings"].append(
            {"id": 22, "component_id": 4, "title": "Tank top", "encloses": [4]})
        document["squawks"] = []
        self.project = self.folder / "Inside.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertRegex(text, r"(?m)^Before it is out of reach \(1\)\n"
                               r"  Tank top, a box inside, is still open\n"
                               r"      before closing: Right wing, lower skin \(21\)$")

    def test_text_names_the_closings_of_what_is_out_of_reach_or_soon_will_be(self):
        text = self.text_about_an_inherited_wing()
        self.assertRegex(text, r"(?m)^Before it is out of reach \(1\)\n  Squawk 4, .*\n"
                               r"      before closing: Right wing, lower skin \(21\)$")
        self.assertRegex(text, r"(?m)^Out of reach already \(1\)\n  Squawk 4, .*\n"
                               r"      to reopen: Tip \(22\)$")

    def test_text_tells_what_unlocks_what_a_visit_could_cover_and_what_is_to_complete(self):
        text = self.text_about_an_inherited_wing()
        self.assertRegex(text, r"(?m)^What unlocks most \(2\)\n  Squawk 1, .*: 1 closing\n"
                               r"  Rivet the nose ribs.*: 1 closing$")
        self.assertRegex(text, r"(?m)^What one visit could cover, after how much work in all"
                               r" \(1\)\n  20  Left wing, lower skin: after 1 h 30,"
                               r" 1 without an estimate$")
        self.assertRegex(text, r"(?m)^To complete in the records \(1\)\n  .*Fin.*: no closing is"
                               r" recorded for it$")

    def test_long_lists_end_after_ten_rows(self):
        document = bench()
        document["steps"] += [{"id": 100 + i, "component_id": RIB, "title": f"Dimple {i}"}
                              for i in range(12)]
        self.project = self.folder / "Long.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project, "--as-of", "2026-03-14").out
        self.assertRegex(text, r"(?m)^What unlocks most \(14\)\n(  \S.*\n){10}  and 4 more$")
        self.assertNotIn("What one visit could cover", text)

    def test_control_characters_of_records_do_not_reach_the_terminal(self):
        document = bench()
        document["closings"][0]["title"] = "Skin\x1b[2J\r\nAll clear"
        self.project = self.folder / "Hostile.lastrivet"
        self.make_project(document)
        text = self.ask("ready", self.project).out
        self.assertNotIn("\x1b", text)
        self.assertNotIn("\r", text)
        self.assertRegex(text, r"(?m)^ .*Skin.*All clear$")


class Hours(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.hours = self.ask("hours", self.project, "--json").json()

    def test_totals_equal_the_sums_of_the_database(self):
        minutes, sessions = self.rows(
            "SELECT sum(minutes) AS a, count(*) AS b FROM work_session WHERE withdrawn_on IS NULL")
        workers, _ = self.rows(
            "SELECT sum(m) AS a, 0 AS b FROM (SELECT coalesce(w.minutes, s.minutes) AS m"
            " FROM work_session s LEFT JOIN work_session_workers w ON w.work_session_id = s.id"
            " WHERE s.withdrawn_on IS NULL)")
        self.assertEqual(self.hours["total"],
                         {"minutes": minutes, "worker_minutes": workers, "sessions": sessions})
        self.assertEqual((minutes, workers, sessions), (150, 190, 4))

    def test_kinds_equal_the_sums_of_the_database(self):
        rows = self.database(
            "SELECT kind, coalesce(sum(minutes), 0) AS minutes, count(*) AS sessions"
            " FROM work_session WHERE withdrawn_on IS NULL GROUP BY kind ORDER BY kind")
        told = sorted(({key: row[key] for key in ("kind", "minutes", "sessions")}
                       for row in self.hours["kinds"]), key=lambda row: row["kind"])
        self.assertEqual(told, rows)

    def test_a_part_counts_what_is_below_it(self):
        left = self.hours["components"][0]
        self.assertEqual(left["own"]["minutes"], 100)
        self.assertEqual(left["with_below"]["minutes"], 130)

    def test_weeks_are_those_of_iso_8601(self):
        self.assertEqual(self.hours["weeks"][0]["week"], "2026-W01")
        self.assertEqual(self.hours["months"][0]["month"], "2025-12")

    def test_every_way_of_grouping_is_told_as_text(self):
        seen = {"component": "Left wing", "month": "2025-12", "week": "2026-W01",
                "person": "Ben Ruiz", "kind": "fabrication"}
        for by, shown in seen.items():
            with self.subTest(by=by):
                text = self.ask("hours", self.project, "--by", by).out
                self.assertIn(shown, text)
                self.assertIn("2 h 30", text)

    def test_csv_has_the_figures_of_the_grouping_in_whole_minutes(self):
        rows = list(csv.DictReader(io.StringIO(
            self.ask("hours", self.project, "--by", "week", "--csv").out)))
        self.assertEqual([(row["week"], int(row["minutes"]), int(row["worker_minutes"]))
                          for row in rows],
                         [(row["week"], row["minutes"], row["worker_minutes"])
                          for row in self.hours["weeks"]])
        self.assertEqual(sum(int(row["rework_worker_minutes"]) for row in rows),
                         self.hours["rework"]["worker_minutes"])
        parts = list(csv.DictReader(io.StringIO(self.ask("hours", self.project, "--csv").out)))
        self.assertEqual(sum(int(row["own_minutes"]) for row in parts),
                         self.hours["total"]["minutes"])

    def test_by_step_the_estimate_stands_beside_what_it_took(self):
        document = bench()
        document["steps"][0]["done_on"] = "2026-01-04"
        document["work_sessions"][0]["step_id"] = RIVET_RIBS
        self.project = self.folder / "Done.lastrivet"
        self.make_project(document)
        text = self.ask("hours", self.project, "--by", "step").out
        self.assertRegex(text, r"Rivet the nose ribs +1 h 30 +2 h 20 +155 %")
        rows = list(csv.DictReader(io.StringIO(
            self.ask("hours", self.project, "--by", "step", "--csv").out)))
        self.assertEqual([(row["step_id"], row["estimate_minutes"], row["worker_minutes"])
                          for row in rows], [(str(RIVET_RIBS), "90", "140")])

    def test_an_unknown_grouping_is_wrong_usage(self):
        self.refused(2, "hours", self.project, "--by", "moon", says="moon")

    def rows(self, query):
        row = self.database(query)[0]
        return row["a"], row["b"]


class Forecast(TerminalTest):
    def setUp(self):
        super().setUp()
        document = bench()
        for week in range(60):
            day = date(2025, 1, 6) + timedelta(weeks=week)
            step = 1000 + week
            document["steps"].append({"id": step, "component_id": RIGHT_WING, "title": "Step",
                                      "estimate_minutes": 120,
                                      **({"done_on": day.isoformat()} if week < 52 else {})})
            if week < 52:
                document["work_sessions"].append(
                    {"id": step, "began": day.isoformat(), "minutes": 150 + week % 7,
                     "component_id": RIGHT_WING, "step_id": step, "kind": "assembly"})
        self.make_project(document)

    def forecast(self, *more):
        return self.ask("forecast", self.project, "--as-of", "2026-01-20", "--json", *more).json()

    def test_ranges_rise_and_the_same_seed_says_the_same(self):
        told = self.forecast("--seed", 5)
        for name in ("minutes_to_go", "finish"):
            self.assertEqual(list(told[name]), ["p10", "p50", "p80", "p90"])
            self.assertEqual(sorted(told[name].values()), list(told[name].values()))
        self.assertEqual(told, self.forecast("--seed", 5))
        self.assertNotEqual(told, self.forecast("--seed", 6))
        self.assertEqual(told["work_left"]["steps"], 10)
        self.assertEqual(told["work_left"]["guessed_estimates"], 1)
        self.assertNotIn("look_back", told)

    def test_a_seed_is_a_whole_number_that_json_keeps(self):
        self.assertEqual(self.forecast("--seed", 2**53 - 1)["seed"], 2**53 - 1)
        self.assertEqual(self.forecast("--seed", 0)["seed"], 0)
        for seed in (-1, 2**53, 2**64, "1.0", "five", ""):
            with self.subTest(seed=seed):
                self.refused(2, "forecast", self.project, "--seed", seed, says="--seed")

    def test_what_is_left_out_by_choice_is_named(self):
        told = self.forecast("--without", "RW")
        self.assertEqual([part["component"] for part in told["without"]], [RIGHT_WING])
        self.assertEqual(told["work_left"]["excluded_steps"], 8)
        text = self.ask("forecast", self.project, "--as-of", "2026-01-20", "--without", "RW").out
        self.assertRegex(text, r"(?m)^Left out by choice: Right wing \(8 steps, 0 squawks\)\.$")

    def test_what_is_left_out_has_to_be_there(self):
        self.refused(2, "forecast", self.project, "--without", "XX",
                     says="--without: no part has the code “XX”")

    def test_a_look_back_tells_each_month_what_was_said_and_what_came(self):
        told = self.forecast("--look-back")["look_back"]
        days = [month["day"] for month in told["months"]]
        self.assertEqual(days, [f"2025-{month:02}-01" for month in range(4, 13)] + ["2026-01-01"])
        march = told["months"][0]
        self.assertEqual(march["steps_since"], 52 - 13)
        worked = self.database("SELECT sum(minutes) AS m FROM work_session WHERE step_id >= 1000"
                               " AND began > '2025-04-01'")[0]["m"]
        # The one rework entry of the bench counts too; half an hour by one.
        self.assertEqual(march["came"], worked + 30)
        text = self.ask("forecast", self.project, "--as-of", "2026-01-20", "--look-back").out
        self.assertRegex(text, r"(?m)^2025-04-01 ")

    def test_a_short_log_asks_for_hours_a_week(self):
        told = self.ask("forecast", self.project, "--as-of", "2025-02-01", "--json").json()
        self.assertTrue(told["needs_hours_per_week"])
        self.assertIsNone(told["finish"])
        told = self.ask("forecast", self.project, "--as-of", "2025-02-01", "--json",
                        "--hours-per-week", "6").json()
        self.assertFalse(told["needs_hours_per_week"])
        self.assertIsNotNone(told["finish"])

    def test_text_says_what_is_missing_to_tell_when(self):
        def text(day):
            return self.ask("forecast", self.project, "--as-of", day).out
        self.assertIn("the log is too short to tell", text("2025-02-01"))
        self.assertIn("nothing was logged in the last 26 weeks", text("2027-01-20"))

    def test_text_says_what_stands_in_for_missing_estimates(self):
        self.assertIn("what finished steps took stands in",
                      self.ask("forecast", self.project, "--as-of", "2026-01-20").out)
        document = bench()
        self.project = self.folder / "Unfinished.lastrivet"
        self.make_project(document)
        self.assertIn("1 step had no estimate; no finished step tells what they take, the median"
                      " of all estimates stands in", self.ask("forecast", self.project).out)
        del document["steps"][0]["estimate_minutes"]
        self.project = self.folder / "Unestimated.lastrivet"
        self.make_project(document)
        self.assertIn("two hours stand in for each", self.ask("forecast", self.project).out)

    def test_what_nobody_estimated_is_no_nought_hours(self):
        self.project = self.folder / "Squawks.lastrivet"
        self.make_project({**bench(), "steps": []})
        text = self.ask("forecast", self.project).out
        self.assertIn("Hours to go: nothing that is left has an estimate.", text)
        self.assertNotIn("0 h", text)

    def test_nothing_left_to_do_is_said_and_asks_for_nothing(self):
        document = bench()
        document["steps"] = []
        document["squawks"] = []
        self.project = self.folder / "Done.lastrivet"
        self.make_project(document)
        told = self.ask("forecast", self.project, "--json").json()
        self.assertFalse(told["needs_hours_per_week"])
        self.assertIsNone(told["finish"])
        text = self.ask("forecast", self.project).out
        self.assertIn("Nothing on record is left to do.", text)
        self.assertNotIn("--hours-per-week", text)


class Credit(TerminalTest):
    def test_the_share_is_told_in_whole_numbers(self):
        self.make_project(bench())
        credit = self.ask("credit", self.project, "--json").json()
        self.assertEqual((credit["rows"], credit["applicable_rows"]), (2, 1))
        self.assertEqual(credit["share_hundredths"], 7000)
        self.assertEqual(credit["share_text"], "70.00")
        self.assertTrue(credit["passes"])
        self.assertEqual(credit["evidence_gaps"], [50])
        text = self.ask("credit", self.project).out
        self.assertIn("70.00", text)
        self.assertRegex(text, r"(?m)^By these figures this is the major portion by the rules of"
                               r" profile plain; the authority decides\.$")
        self.assertRegex(text, r"(?m)^  Wings: Rivet the ribs$")

    def test_a_row_without_section_is_named_by_its_task(self):
        document = bench()
        del document["credit_tasks"][0]["section"]
        self.make_project(document)
        self.assertRegex(self.ask("credit", self.project).out, r"(?m)^  Rivet the ribs$")

    def test_where_no_row_applies_there_is_no_verdict(self):
        document = bench()
        document["credit_tasks"] = document["credit_tasks"][1:]
        self.make_project(document)
        text = self.ask("credit", self.project).out
        self.assertIn("No row applies yet", text)
        self.assertNotIn("the authority decides", text)


class Squawks(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def test_what_the_next_closing_would_bury_comes_first_and_settled_ones_last(self):
        answer = self.ask("squawks", self.project, "--json").json()
        self.assertEqual(answer["count"], 4)
        self.assertEqual([(row["id"], row["reachable"], row["closings"])
                          for row in answer["squawks"]],
                         [(BURR, "not_for_long", [RIGHT_SKIN]), (LOOSE_WIRE, "yes", []),
                          (OVERDRIVEN, "yes", []), (SCRATCH, "done", [])])
        self.assertEqual([row["state"] for row in answer["squawks"]],
                         ["open", "open", "open", "verified"])

    def test_open_leaves_out_verified_and_accepted_ones(self):
        answer = self.ask("squawks", self.project, "--open", "--json").json()
        self.assertEqual({row["id"] for row in answer["squawks"]}, {BURR, OVERDRIVEN, LOOSE_WIRE})

    def test_what_lies_ahead_has_not_happened_yet(self):
        ahead = (date.today() + timedelta(days=200)).isoformat()
        document = bench()
        document["squawks"][0].update(fixed_on=ahead, correction="drilled out")
        document["squawks"][1]["verified_on"] = ahead
        document["squawks"][2]["found_on"] = ahead
        self.project = self.folder / "Ahead.lastrivet"
        self.make_project(document)
        answer = self.ask("squawks", self.project, "--json").json()
        self.assertEqual({row["id"]: row["state"] for row in answer["squawks"]},
                         {OVERDRIVEN: "open", SCRATCH: "fixed", BURR: "open"})
        text = self.ask("squawks", self.project, "--open").out
        self.assertIn("3 squawks, 3 of them outstanding", text)

    def test_text_is_a_table_in_the_same_order(self):
        lines = self.ask("squawks", self.project).out.splitlines()
        self.assertRegex(lines[1], r"^4 +RW +Burr in the spar web +workmanship +2026-02-05 +open"
                                   r" +not for long +Right wing, lower skin$")
        self.assertIn("3 of them outstanding", lines[-1])

    def test_csv_can_be_read_back_and_is_not_run_by_a_spreadsheet(self):
        document = bench()
        document["squawks"][0]["title"] = '=HYPERLINK("x"), "quoted"'
        self.project = self.folder / "Csv.lastrivet"
        self.make_project(document)
        rows = list(csv.DictReader(io.StringIO(self.ask("squawks", self.project, "--open",
                                                        "--csv").out)))
        self.assertEqual(sorted(row["number"] for row in rows), ["1", "3", "4"])
        wild = next(row for row in rows if "HYPERLINK" in row["title"])
        self.assertFalse(wild["title"].startswith("="))
        self.assertIn('HYPERLINK("x"), "quoted"', wild["title"])

    def test_csv_keeps_the_order_of_the_list_and_names_parts_and_closings(self):
        rows = list(csv.DictReader(io.StringIO(self.ask("squawks", self.project, "--csv").out)))
        self.assertEqual([int(row["id"]) for row in rows], [BURR, LOOSE_WIRE, OVERDRIVEN, SCRATCH])
        self.assertEqual((rows[0]["state"], rows[0]["reachable"]), ("open", "not_for_long"))
        self.assertEqual(rows[0]["closings"], "Right wing, lower skin")
        self.assertTrue(rows[0]["part"].startswith("RW"))

    def test_filters_narrow_the_list(self):
        def ids(*options):
            answer = self.ask("squawks", self.project, "--json", *options).json()
            return {row["id"] for row in answer["squawks"]}
        self.assertEqual(ids("--standing", "done"), {SCRATCH})
        self.assertEqual(ids("--part", "RW"), {BURR, SCRATCH})
        self.assertEqual(ids("--reachable", "not_for_long"), {BURR})
        self.assertEqual(ids("--text", "PAGES wiring"), {LOOSE_WIRE})
        self.assertEqual(ids("--open", "--severity", "cosmetic"), set())

    def test_unknown_part_and_severity_are_wrong_usage(self):
        self.refused(2, "squawks", self.project, "--part", "XX",
                     says="--part: no part has the code “XX”")
        self.refused(2, "squawks", self.project, "--severity", "loud", says="severity")

    def test_csv_and_json_together_are_wrong_usage(self):
        self.refused(2, "squawks", self.project, "--csv", "--json", says="--csv")
        self.refused(2, "hours", self.project, "--csv", "--json", says="--csv")


class Locale(TerminalTest):
    def test_a_comma_locale_changes_no_byte(self):
        locales = self.folder / "locales"
        locales.mkdir()
        made = subprocess.run(["localedef", "-i", "de_DE", "-f", "UTF-8", locales / "de_DE.UTF-8"],
                              capture_output=True, check=False)
        self.assertEqual(made.returncode, 0, made.stderr)
        comma = {"LOCPATH": str(locales), "LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8"}
        document = bench()
        document["measurements"] = [
            {"id": 60, "component_id": 1, "what": "gap", "unit": "mm", "minimum": 0.25,
             "maximum": 1.5, "value": 0.75, "measured_on": "2026-01-04"}]
        path = self.write("decimals.json", document)
        self.ask("import", self.project, path, "--create", environment=comma)
        for verb in (("ready",), ("hours",), ("credit",), ("squawks",), ("hours", "--json")):
            with self.subTest(verb=verb):
                arguments = (verb[0], self.project, *verb[1:])
                self.assertEqual(self.ask(*arguments, environment=comma).out,
                                 self.ask(*arguments).out)
        self.ask("export", self.project, "--to", self.folder / "out.json", environment=comma)
        self.assertIn('"minimum": 0.25', (self.folder / "out.json").read_text(encoding="utf-8"))
        # Only what prints takes over the locale of the computer, by way of Qt.
        for print_it in (("packet", "--closing", LEFT_SKIN), ("logbook",)):
            pdf = self.folder / f"{print_it[0]}.pdf"
            self.ask(print_it[0], self.project, *print_it[1:], "--to", pdf, environment=comma)
        told = subprocess.run(["pdftotext", "-layout", self.folder / "packet.pdf", "-"],
                              capture_output=True, text=True, check=True).stdout
        self.assertRegex(told, r"\b0\.75\b")
        self.assertNotRegex(told, r"\b0,75\b")
