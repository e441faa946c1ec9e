# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The verbs that write, and the journal of what they wrote."""

import datetime
import hashlib
import json
import sqlite3
import subprocess
import zoneinfo

from documents import BUILDER, HELPER, INSPECTOR, LEFT_SKIN, LEFT_WING, bench, of_this
from terminal import PROGRAM, TerminalTest


class New(TerminalTest):
    def test_makes_a_project_folder_that_every_verb_reads(self):
        said = self.ask("new", self.project, "--name", "Larkspur", "--profile", "ca").out
        self.assertIn("profile ca", said)
        for place in ("records.db", "photos", "documents", "READ-ME-FIRST.txt"):
            self.assertTrue((self.project / place).exists(), place)
        for verb in ("ready", "hours", "credit", "squawks", "verify", "journal"):
            with self.subTest(verb=verb):
                self.ask(verb, self.project)
                self.ask(verb, self.project, "--json").json()

    def test_who_becomes_the_builder(self):
        self.ask("new", self.project, "--name", "Larkspur", "--profile", "gb", "--who", "Ada Holm")
        rows = self.database("SELECT p.name FROM project JOIN person p ON p.id = builder_id")
        self.assertEqual(rows, [{"name": "Ada Holm"}])

    def test_refuses_a_folder_that_is_there(self):
        self.ask("new", self.project, "--name", "One", "--profile", "ca")
        before = (self.project / "records.db").read_bytes()
        self.refused(3, "new", self.project, "--name", "Two", "--profile", "ca", says="exists")
        self.assertEqual((self.project / "records.db").read_bytes(), before)

    def test_the_time_zone_is_that_of_the_environment(self):
        for number, zone in enumerate(("Europe/Paris", ":Europe/Paris",
                                       ":/usr/share/zoneinfo/Europe/Paris")):
            with self.subTest(zone=zone):
                self.project = self.folder / f"Bench{number}.lastrivet"
                self.ask("new", self.project, "--name", "N", "--profile", "plain",
                         environment={"TZ": zone})
                self.assertEqual(self.database("SELECT time_zone FROM project"),
                                 [{"time_zone": "Europe/Paris"}])

    def test_a_folder_without_a_name_takes_nothing_from_the_one_that_one_is_in(self):
        self.ask("new", self.project, "--name", "One", "--profile", "ca")
        (self.project / "photos/a.jpg").write_bytes(b"a")
        path = self.write("bench.json", bench())
        for arguments in (("new", "", "--name", "N", "--profile", "ca"),
                          ("import", "", path, "--create")):
            done = subprocess.run([PROGRAM, *arguments], cwd=self.project, capture_output=True,
                                  check=False)
            self.assertEqual(done.returncode, 3, done.stderr)
        self.assertEqual((self.project / "photos/a.jpg").read_bytes(), b"a")
        self.ask("journal", self.project)

    def test_an_unknown_profile_is_wrong_usage_and_names_those_there_are(self):
        self.refused(2, "new", self.project, "--name", "N", "--profile", "xx", says="plain")
        self.assertFalse(self.project.exists())


class Log(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def log(self, *more):
        return self.ask("log", self.project, "--component", "LW", "--minutes", "45", "--note",
                        "Dimpled the skin", *more, "--json").json()["id"]

    def test_enters_a_session_for_the_builder(self):
        made = self.log("--kind", "fabrication", "--began", "2026-03-14T18:00")
        self.assertEqual(
            self.database(f"SELECT began, minutes, component_id, kind, note FROM work_session"
                          f" WHERE id = {made}"),
            [{"began": "2026-03-14T18:00", "minutes": 45, "component_id": LEFT_WING,
              "kind": "fabrication", "note": "Dimpled the skin"}])
        self.assertEqual(self.workers(made), [BUILDER])

    def test_who_says_whose_work_and_whose_change_it_is(self):
        self.assertEqual(self.workers(self.log("--who", "Ben Ruiz")), [HELPER])
        entry = self.ask("journal", self.project, "--json").json()[-1]
        self.assertEqual(entry["who"], "Ben Ruiz")

    def test_a_name_that_two_people_have_says_nothing_of_whose_work_it_is(self):
        self.project = self.folder / "Two.lastrivet"
        self.make_project(of_this(bench(), people=[
            {"id": BUILDER, "name": "Ada Holm", "roles": ["builder"]},
            {"id": HELPER, "name": "Ben Ruiz", "roles": ["helper"]},
            {"id": 95, "name": "Ben Ruiz", "roles": ["inspector"]},
            {"id": 96, "name": "Ada Holm", "roles": ["helper"], "withdrawn_on": "2026-02-01",
             "withdrawn_why": "entered twice"}]))
        answer = self.refused(2, "log", self.project, "--component", "LW", "--minutes", "5",
                              "--note", "x", "--who", "Ben Ruiz", says="2 people")
        self.assertIn(f"{HELPER}, 95", answer.err)
        self.assertEqual(self.workers(self.log("--who", "Ada Holm")), [BUILDER])

    def test_the_hours_grow_by_what_was_entered(self):
        before = self.ask("hours", self.project, "--json").json()["total"]["minutes"]
        self.log()
        after = self.ask("hours", self.project, "--json").json()["total"]["minutes"]
        self.assertEqual(after, before + 45)

    def test_the_state_that_each_leaves_is_kept_in_backups(self):
        made = {self.log(), self.log()}
        newest = max((self.project / "backups").glob("records-*.db"))
        copy = sqlite3.connect(newest)
        kept = {row for row, in copy.execute("SELECT id FROM work_session")}
        copy.close()
        self.assertLessEqual(made, kept)

    def test_a_code_is_found_in_any_case(self):
        self.ask("log", self.project, "--component", "lw-r1", "--minutes", "5", "--note", "x")

    def test_noughts_in_front_of_a_number_say_nothing(self):
        answer = self.ask("log", self.project, "--component", "LW", "--minutes", "010", "--note",
                          "Swept", "--json").json()
        self.assertEqual(answer["minutes"], 10)

    def test_what_makes_no_sense_is_wrong_usage(self):
        usual = {"--component": "LW", "--minutes": "45", "--note": "x"}
        for option, value in (("--component", "XX"), ("--minutes", "0"), ("--minutes", "-5"),
                              ("--minutes", "1.5"), ("--minutes", "99999999999999999999"),
                              ("--minutes", "600001"), ("--minutes", "0x10"),
                              ("--kind", "sleeping"), ("--began", "2026-02-30"),
                              ("--began", "14.3.2026"), ("--who", "Nobody"), ("--note", " ")):
            with self.subTest(option=option, value=value):
                arguments = {**usual, option: value}
                self.refused(2, "log", self.project,
                             *[f"{name}={text}" for name, text in arguments.items()], says=option)

    def test_a_day_that_is_to_come_is_told(self):
        before = self.ask("hours", self.project, "--json").json()["total"]["minutes"]
        text = self.ask("log", self.project, "--component", "LW", "--minutes", "5", "--note", "x",
                        "--began", "2190-01-01").out
        self.assertIn("2190-01-01, which is still to come: its hours count already", text)
        self.assertEqual(self.ask("hours", self.project, "--json").json()["total"]["minutes"],
                         before + 5)

    def test_a_signature_that_work_came_after_is_named_once(self):
        self.project = self.folder / "Signed.lastrivet"
        self.make_project(of_this(
            bench(),
            hold_points=[{"id": 60, "closing_id": LEFT_SKIN, "kind": "pre_cover",
                          "signer_role": "inspector"}],
            sign_offs=[{"id": 61, "hold_point_id": 60, "person_id": INSPECTOR,
                        "signed_on": "2026-02-10", "result": "accepted"}]))
        entry = ("log", self.project, "--component", "LW-R1", "--minutes", "5", "--note", "x",
                 "--began", "2026-02-11")
        lines = self.ask(*entry).out.splitlines()
        self.assertEqual(len(lines), 2, lines)
        self.assertTrue(lines[1].startswith("Left wing, lower skin: "), lines)
        self.assertIn("after the signature came", lines[1])
        self.assertEqual(len(self.ask(*entry).out.splitlines()), 1)
        elsewhere = ("log", self.project, "--component", "RW", "--minutes", "5", "--note", "x")
        self.assertEqual(len(self.ask(*elsewhere).out.splitlines()), 1)
        self.ask(*entry, "--json").json()

    def workers(self, session):
        return [row["person_id"] for row in self.database(
            f"SELECT person_id FROM work_session_workers WHERE work_session_id = {session}")]


class Undo(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def test_takes_back_the_last_change_of_another_process_and_makes_it_again(self):
        before = self.exported()
        self.ask("log", self.project, "--component", "RW", "--minutes", "5", "--note", "Swept")
        after = self.exported()
        self.assertNotEqual(before, after)
        self.assertIn("Undone: ", self.ask("undo", self.project).out)
        self.assertEqual(self.exported(), before)
        self.assertIn("Redone: ", self.ask("redo", self.project).out)
        self.assertEqual(self.exported(), after)
        self.ask("verify", self.project)

    def test_nothing_to_undo_or_redo_is_a_no(self):
        self.refused(1, "redo", self.project, says="nothing to redo")
        self.ask("undo", self.project)
        self.refused(1, "undo", self.project, says="nothing to undo")

    def test_a_new_change_forgets_what_could_be_redone(self):
        self.ask("log", self.project, "--component", "RW", "--minutes", "5", "--note", "One")
        self.ask("undo", self.project)
        self.ask("log", self.project, "--component", "RW", "--minutes", "6", "--note", "Two")
        self.refused(1, "redo", self.project, says="nothing to redo")

    def test_takes_back_an_older_row_and_leaves_what_came_later(self):
        self.ask("log", self.project, "--component", "RW", "--minutes", "5", "--note", "One")
        row = self.ask("journal", self.project, "--json").json()[-1]["seq"]
        self.ask("log", self.project, "--component", "RW", "--minutes", "6", "--note", "Two")
        self.assertIn("Taken back: ", self.ask("undo", self.project, "--row", row).out)
        left = {s.get("note"): s.get("withdrawn_why") for s in json.loads(self.exported())["work_sessions"]
                if s.get("note") in ("One", "Two")}
        self.assertIsNone(left["Two"])
        self.assertTrue(left["One"].startswith("Taken back: "))
        self.refused(3, "undo", self.project, "--row", row, says="changed the same record later")
        self.refused(2, "undo", self.project, "--row", "999", says="no row 999")
        self.refused(1, "undo", self.project, "--row", "1", says="changed nothing that could be")
        self.ask("log", self.project, "--component", "RW", "--minutes", "7", "--note", "Three")
        newest = self.ask("journal", self.project, "--json").json()[-1]["seq"]
        self.ask("undo", self.project)
        self.refused(1, "undo", self.project, "--row", newest, says="was taken back already")
        self.ask("verify", self.project)

    def exported(self):
        path = self.folder / "state.json"
        self.ask("export", self.project, "--to", path)
        return path.read_bytes()


class Journal(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.ask("log", self.project, "--component", "RW", "--minutes", "5", "--note", "Swept")
        self.ask("undo", self.project)

    def test_json_tells_each_change_field_by_field(self):
        entries = self.ask("journal", self.project, "--json").json()
        self.assertEqual([e["seq"] for e in entries], list(range(1, len(entries) + 1)))
        self.assertEqual([e["kind"] for e in entries[-3:]], ["import", "change", "undo"])
        log = entries[-2]
        self.assertEqual(log["who"], "Ada Holm")
        change, = log["changes"]
        self.assertEqual((change["record"], change["kind"]), ("work_session", "insert"))
        self.assertEqual(change["fields"]["minutes"], {"from": None, "to": 5})
        self.assertEqual(change["fields"]["note"], {"from": None, "to": "Swept"})
        workers = change["fields"]["workers"]
        self.assertEqual((len(workers["added"]), workers["removed"]), (1, []))
        self.assertEqual(workers["added"][0]["person_id"], BUILDER)
        self.assertEqual(entries[-1]["changes"][0]["kind"], "delete")

    def test_each_hash_is_that_of_the_row_and_of_the_row_before(self):
        """The chain worked out again with Python's hashlib, from the columns as they are stored."""
        told = self.ask("journal", self.project, "--json").json()
        database = sqlite3.connect(f"file:{self.project / 'records.db'}?mode=ro", uri=True)
        rows = database.execute(
            "SELECT seq, change_id, stamp, kind, undoes, who, label, schema, changeset,"
            " origin_hash, previous_hash, hash FROM journal ORDER BY seq").fetchall()
        previous = bytes(32)
        for row, entry in zip(rows, told, strict=True):
            self.assertEqual(row[10], previous)
            previous = hashlib.sha256(b"".join(map(netstring, row[:11]))).digest()
            self.assertEqual(row[11], previous)
            self.assertEqual(entry["hash"], previous.hex())

    def test_text_says_when_who_and_what(self):
        text = self.ask("journal", self.project).out
        stamp, = self.database("SELECT stamp FROM journal WHERE kind = 'undo'")
        berlin = datetime.datetime.fromtimestamp(stamp["stamp"] / 1000,
                                                 zoneinfo.ZoneInfo("Europe/Berlin"))
        self.assertRegex(text, rf"(?m)^\d+ +{berlin:%Y-%m-%dT%H:%M} +Ada Holm: ")
        self.assertIn("minutes: 5", text)


def netstring(value):
    if value is None:
        return b"-,"
    if isinstance(value, int):
        value = str(value)
    data = value.encode("utf-8") if isinstance(value, str) else value
    return b"%d:%s," % (len(data), data)
