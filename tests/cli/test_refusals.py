# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Bad input: one clear sentence each, and nothing is changed."""

import json
import os
import sqlite3
import subprocess
import time
import unittest

from documents import LEFT_WING, RIB, bench
from terminal import PROGRAM, TerminalTest

NOBODY = 65534


class Usage(TerminalTest):
    def test_the_command_line_has_to_make_sense(self):
        self.refused(2, says="verb")
        self.refused(2, "fly", self.project, says="fly")
        self.refused(2, "ready", says="PROJECT")
        self.refused(2, "ready", self.project, "--loud", says="--loud")
        self.refused(2, "new", self.project, "--profile", "ca", says="--name")
        self.refused(2, "new", self.project, "--name", "", "--profile", "ca", says="--name")
        self.assertFalse(self.project.exists())

    def test_an_option_without_a_value_is_none_that_was_not_given(self):
        self.make_project(bench())
        self.ask("log", self.project, "--component", "LW", "--minutes", 5, "--note", "Going on")
        before = self.ask("journal", self.project).out
        for option in (("undo", "--row"), ("undo", "--who"), ("forecast", "--hours-per-week"),
                       ("photos", "--shift", "1h", "--component"),
                       ("photos", "--shift", "1h", "--from"), ("photos", "--shift"),
                       ("squawks", "--part"), ("squawks", "--inspection")):
            for empty in ("", " "):
                with self.subTest(option=option, empty=empty):
                    verb, *rest = option
                    self.refused(2, verb, self.project, *rest, empty,
                                 says=f"{rest[-1]}: the value is empty")
        self.refused(2, "packet", self.project, "--closing", "1", "--to", "", says="--to")
        self.refused(2, "packet", self.project, "--closing", "1", "--to", "--json",
                     says="--to: the value is missing; --json is an option")
        self.refused(2, "log", self.project, "--component", "LW", "--minutes", 5, "--note",
                     "--who", says="--note: the value is missing")
        self.assertEqual(self.ask("journal", self.project).out, before)

    def test_help_and_version_are_answers(self):
        self.assertIn("ready", self.ask("--help").out)
        self.assertIn("--as-of", self.ask("ready", "--help").out)
        self.assertRegex(self.ask("--version").out, r"^\d+\.\d+\.\d+\n$")

    def test_what_goes_into_the_records_is_in_utf_8(self):
        # Python hands these on as bytes that are no UTF-8.
        self.refused(2, "new", self.project, "--name", "N\udcff", "--profile", "ca", says="--name")
        self.refused(2, "new", self.project, "--name", "N", "--profile", "ca", "--who", "B\udcfe",
                     says="--who")
        self.assertFalse(self.project.exists())
        self.make_project(bench())
        self.refused(2, "log", self.project, "--component", "LW", "--minutes", "5", "--note",
                     "\udce9", says="--note")
        self.refused(2, "undo", self.project, "--who", "B\udcfe", says="--who")

    def test_no_place_for_temporary_files(self):
        self.make_project(bench())
        self.refused(3, "export", self.project, "--to", self.folder / "P.zip",
                     says="temporary files", environment={"TMPDIR": str(self.folder / "nowhere")})
        self.assertFalse((self.folder / "P.zip").exists())

    def test_what_is_wrong_stays_on_one_line_whatever_the_record_is_called(self):
        document = bench()
        document["components"].append({"id": 9, "name": "Lower\u2028left\u2029\nwindow", "hue": 1})
        path = self.write("named.json", document)
        self.refused(3, "import", self.project, path, "--create", says="Lower left  window")

    def test_files_may_have_any_name(self):
        path = self.write("d\udcff.json", bench())
        made = self.ask("import", self.project, path, "--create", "--json").json()
        self.assertTrue(made["files"][0]["file"].endswith("d\ufffd.json"))
        entry = self.ask("journal", self.project, "--json").json()[-1]
        self.assertEqual(entry["label"], "Imported d\ufffd.json")
        self.refused(3, "ready", self.folder / "x\udcff", says="x\ufffd is not a Lastrivet project")
        self.refused(2, "ready", self.project, "--closing", "\udcff", says="no closing \ufffd.")
        self.refused(2, "\udcff", says="no verb “\ufffd”")

    def test_a_code_that_two_parts_have_but_for_its_case_is_told(self):
        document = bench()
        document["components"].append({"id": 9, "code": "lw", "name": "Lower window"})
        self.make_project(document)
        log = ("log", self.project, "--minutes", 5, "--note", "Going on", "--component")
        answer = self.refused(2, *log, "Lw", says="LW or lw")
        self.assertNotIn("no part", answer.err)
        self.ask(*log, "lw")
        self.refused(2, *log, "XX", says="no part has the code")

    def test_ids_and_days_that_do_not_exist(self):
        self.make_project(bench())
        self.refused(2, "ready", self.project, "--closing", "999", says="999")
        self.refused(2, "ready", self.project, "--closing", "one", says="one")
        self.refused(2, "squawks", self.project, "--inspection", "0", says="there is no inspection 0")
        beyond = "99999999999999999999"
        self.refused(2, "ready", self.project, "--closing", beyond, says=f"no closing {beyond}.")
        for moment in ("2026-02-30", "2026-03-02T7:00", "2026-03-02T25:00", "2200-01-01"):
            self.refused(2, "ready", self.project, "--as-of", moment,
                         says=f"“{moment}” is no day or time from 1900 to 2199; write")
        self.refused(2, "ready", self.project, "--as-of", "", says="--as-of")
        self.refused(2, "packet", self.project, "--closing", "999", "--to",
                     self.folder / "p.pdf", says="999")


class NoProject(TerminalTest):
    READING = ("ready", "hours", "credit", "squawks", "verify", "journal")

    def refused_everywhere(self, says):
        for verb in (*self.READING, "undo", "redo"):
            with self.subTest(verb=verb):
                self.refused(3, verb, self.project, says=says)
        self.refused(3, "log", self.project, "--component", "LW", "--minutes", "5", "--note", "x",
                     says=says)
        self.refused(3, "export", self.project, "--to", self.folder / "x.json", says=says)
        self.assertFalse((self.folder / "x.json").exists())

    def test_nothing_there(self):
        self.refused_everywhere("not a Lastrivet project")
        path = self.write("bench.json", bench())
        self.refused(3, "import", self.project, path, says="not a Lastrivet project")
        self.assertFalse(self.project.exists())

    def test_a_folder_of_something_else(self):
        self.project.mkdir()
        (self.project / "letter.txt").write_text("Dear Ada", encoding="utf-8")
        self.refused_everywhere("not a Lastrivet project")
        path = self.write("bench.json", bench())
        self.refused(3, "import", self.project, path, "--create", says="not a Lastrivet project")
        self.assertEqual(os.listdir(self.project), ["letter.txt"])

    def test_another_programs_database(self):
        self.project.mkdir()
        database = sqlite3.connect(self.project / "records.db")
        database.execute("CREATE TABLE stamps(id)")
        database.commit()
        database.close()
        self.refused_everywhere("not a Lastrivet project")

    def test_a_database_of_a_newer_program_is_left_as_it_is(self):
        self.make_project(bench())
        subprocess.run(["sqlite3", self.project / "records.db", "PRAGMA user_version=99"],
                       check=True)
        before = (self.project / "records.db").read_bytes()
        self.refused_everywhere("newer")
        for answer in (self.refused(3, "ready", self.project, says="newer"),
                       self.refused(3, "verify", self.project, says="newer"),
                       self.refused(3, "verify", self.project, "--repair", says="newer"),
                       self.refused(3, "restore", self.project, "--to", self.folder / "again",
                                    says="newer")):
            self.assertEqual(answer.err.count(str(self.project)), 1)
        self.assertFalse((self.folder / "again").exists())
        self.assertEqual((self.project / "records.db").read_bytes(), before)

    def test_a_database_cut_short(self):
        self.make_project(bench())
        path = self.project / "records.db"
        os.truncate(path, path.stat().st_size // 2)
        before = path.read_bytes()
        for verb in ("ready", "hours", "undo"):
            self.refused(3, verb, self.project, says="cut short")
        verified = self.run_program("verify", self.project)
        self.assertEqual(verified.code, 1)
        self.assertIn("cut short", verified.out)
        self.assertEqual(path.read_bytes(), before)

    def test_a_damaged_database_is_told_with_where_it_lies(self):
        self.make_project(bench())
        path = self.project / "records.db"
        content = bytearray(path.read_bytes())
        content[100:4000] = bytes(3900)
        path.write_bytes(content)
        for name in ("records.db-wal", "records.db-shm"):
            (self.project / name).unlink(missing_ok=True)
        for verb in ("hours", "undo"):
            answer = self.refused(3, verb, self.project, says="damaged")
            self.assertIn(str(self.project), answer.err)
            # A short name stands in many a sentence.
            answer = self.refused(3, verb, ".", says="damaged", folder=self.project)
            self.assertTrue(answer.err.startswith("lastrivet-cli: .: "), answer.err)

    def test_a_refusal_names_the_place_once(self):
        answer = self.refused(3, "hours", self.project, says="not a Lastrivet project")
        self.assertEqual(answer.err.count(str(self.project)), 1)


class ReadOnly(TerminalTest):
    """A folder that may be read and not written, as another user when root runs the tests."""

    def setUp(self):
        super().setUp()
        self.make_project(bench())
        os.chmod(self.folder, 0o755)
        for place in (self.project, *self.project.rglob("*")):
            os.chmod(place, 0o555 if place.is_dir() else 0o444)
        self.addCleanup(self.make_writable)
        if self.as_nobody("--version").returncode != 0:
            self.skipTest("the program cannot be run as another user here")

    def test_what_may_not_be_read_is_not_told_as_something_else(self):
        for place in (self.project / "records.db", self.project):
            with self.subTest(place=place):
                before = place.stat().st_mode
                os.chmod(place, 0)
                done = self.as_nobody("ready", self.project)
                os.chmod(place, before)
                self.assertEqual(done.returncode, 3)
                self.assertEqual(done.stderr,
                                 f"lastrivet-cli: {place} cannot be read: its permissions forbid it.\n")

    def test_reading_works_and_writing_is_refused(self):
        before = (self.project / "records.db").read_bytes()
        self.assertEqual(json.loads(self.as_nobody("hours", self.project, "--json").stdout)
                         ["total"]["minutes"], 150)
        done = self.as_nobody("log", self.project, "--component", "LW", "--minutes", "5",
                              "--note", "x")
        self.assertEqual((done.returncode, done.stdout), (3, ""))
        self.assertIn("cannot be written", done.stderr)
        self.assertEqual(done.stderr.count("\n"), 1)
        self.assertEqual((self.project / "records.db").read_bytes(), before)

    def as_nobody(self, *arguments):
        user = {"user": NOBODY} if os.geteuid() == 0 else {}
        try:
            return subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, text=True,
                                  check=False, **user)
        except PermissionError:
            return subprocess.CompletedProcess(arguments, 126)

    def make_writable(self):
        for place in (self.project, *self.project.rglob("*")):
            os.chmod(place, 0o755 if place.is_dir() else 0o644)


class Documents(TerminalTest):
    """Each goes into a project that is there, and into a new one."""

    def setUp(self):
        super().setUp()
        self.make_project({**bench(), "squawks": []})

    def refuse(self, content, *says, lines=1):
        path = self.write("bad.json", content)
        before = self.state()
        fresh = self.folder / "Fresh.lastrivet"
        for arguments in ((self.project, path), (fresh, path, "--create")):
            answer = self.run_program("import", *arguments)
            self.assertEqual((answer.code, answer.out), (3, ""), answer.err)
            self.assertEqual(len(answer.err.splitlines()), lines, answer.err)
            for text in ("bad.json", *says):
                self.assertIn(text, answer.err)
        self.assertFalse(fresh.exists())
        self.assertEqual(self.state(), before)

    def state(self):
        journal = self.ask("journal", self.project, "--json").json()
        self.ask("export", self.project, "--to", self.folder / "state.json")
        return len(journal), (self.folder / "state.json").read_bytes()

    def changed(self, array, index, **fields):
        document = bench()
        document[array][index].update(fields)
        return document

    def test_parts_in_a_circle(self):
        document = self.changed("components", 0, parent_id=RIB)
        path = self.write("bad.json", document)
        fresh = self.folder / "Fresh.lastrivet"
        answer = self.run_program("import", fresh, path, "--create")
        self.assertEqual(answer.code, 3)
        self.assertIn("LW", answer.err)
        self.assertFalse(fresh.exists())

    def test_a_field_nobody_knows(self):
        self.refuse(self.changed("squawks", 0, colour="red"), "/squawks/0", "colour")

    def test_a_field_twice(self):
        text = json.dumps(bench()).replace('"number": "1"', '"number": "1", "number": "2"')
        self.refuse(text, "/squawks/0", "number")

    def test_no_id(self):
        document = bench()
        del document["squawks"][0]["id"]
        self.refuse(document, "/squawks/0", "id")

    def test_numbers_beyond_bounds(self):
        for number in ("99999999999999999999", "1e400", "1.5", "9007199254740992", "-1", "0"):
            with self.subTest(number=number):
                text = json.dumps(bench()).replace('"id": 30,', f'"id": {number},')
                self.refuse(text, "/squawks/0")

    def test_a_text_that_is_no_utf_8(self):
        self.refuse(json.dumps(self.changed("squawks", 0, title="Größe"),
                               ensure_ascii=False).encode("latin-1"), "UTF-8")

    def test_no_json_and_no_document_of_ours(self):
        for content in ("", "{", "[]", "null", "{}", '{"format": "other"}', "\x00\x01\x02"):
            with self.subTest(content=content):
                self.refuse(content)
        self.refuse(json.dumps(bench()) + "}")

    def test_nesting_without_end(self):
        self.refuse("[" * 100_000)

    def test_a_day_that_does_not_exist(self):
        self.refuse(self.changed("squawks", 0, found_on="2026-02-30"), "/squawks/0/found_on",
                    "2026-02-30")

    def test_a_part_that_is_not_there(self):
        self.refuse(self.changed("squawks", 0, component_id=777), "/squawks/0", "777")

    def test_every_error_has_a_line(self):
        document = bench()
        for squawk in document["squawks"]:
            squawk["found_on"] = "never"
        self.refuse(document, "/squawks/0/found_on", "/squawks/3/found_on", lines=4)

    def test_a_file_that_would_lie_outside_the_project(self):
        for name in ("../escape.jpg", "/etc/passwd", "photos/../../escape.jpg"):
            with self.subTest(name=name):
                self.write("escape.jpg", b"\xff\xd8\xff\xd9")
                document = bench()
                document["media"] = [{"id": 70, "file": name, "sha256": "0" * 64,
                                      "imported_on": "2026-01-01"}]
                self.refuse(document, "/media/0")
        self.assertFalse((self.folder.parent / "escape.jpg").exists())

    def test_other_content_under_a_known_id(self):
        document = {**bench(), "squawks": []}
        document["people"][0]["name"] = "Someone else"
        path = self.write("bad.json", document)
        before = self.state()
        self.refused(3, "import", self.project, path, says="/people/0")
        self.assertEqual(self.state(), before)

    def test_lists_that_are_none(self):
        before = self.state()
        for content, says in ((b"", "empty"), (b"code,name\nX1,\"open", ""),
                              (b"code,name\nX1,Gr\xc3\xb6\xc3\x9fe\nX2,\xff\n", "UTF-8"),
                              (b"\xff\xd8\xff\xe0", ""), (b"colour\nred\n", "")):
            with self.subTest(content=content):
                path = self.write("bad.csv", content)
                self.refused(3, "import", self.project, path, "--as", "components", says=says)
        self.assertEqual(self.state(), before)

    def test_a_file_that_is_no_such_list(self):
        before = self.state()
        for content in ("{}", json.dumps(bench()), "colour\nred\n", "colour\n"):
            with self.subTest(content=content[:20]):
                path = self.write("bad.csv", content)
                self.refused(3, "import", self.project, path, "--as", "components",
                             says="bad.csv: The first row names no field of components; these have")
        self.assertEqual(self.state(), before)

    def test_a_file_that_is_not_there(self):
        self.refused(3, "import", self.project, self.folder / "none.json", says="none.json")
        self.refused(3, "import", self.project, self.folder, says=str(self.folder))


class Repair(TerminalTest):
    def test_what_can_be_made_anew_is_and_damage_that_is_left_is_the_answer(self):
        self.make_project(bench())
        leftover = self.project / "photos" / ".tmp-99999999-1"
        leftover.write_bytes(b"half a pho")
        self.assertEqual(self.run_program("verify", self.project).code, 1)
        repaired = self.ask("verify", self.project, "--repair", "--json").json()
        self.assertTrue(repaired["ok"])
        self.assertIn("Removed the half-written file photos/.tmp-99999999-1.",
                      repaired["repaired"])
        self.assertFalse(leftover.exists())
        subprocess.run(["sqlite3", self.project / "records.db",
                        "UPDATE component SET name='Fin' WHERE id=1"], check=True)
        left = self.run_program("verify", self.project, "--repair")
        self.assertEqual(left.code, 1)
        self.assertIn("repair: Made the search index anew", left.out)
        self.assertIn("differs from what the journal made of it", left.out)

    def test_a_second_database_in_the_folder_is_told(self):
        self.make_project(bench())
        stray = self.project / "records (conflicted copy).db"
        stray.write_bytes((self.project / "records.db").read_bytes())
        verified = self.run_program("verify", self.project)
        self.assertEqual(verified.code, 1)
        self.assertIn(stray.name, verified.out)


class TwoPrograms(TerminalTest):
    def test_a_project_that_another_program_writes_to_can_only_be_read(self):
        self.make_project(bench())
        pipe = self.folder / "slow.json"
        os.mkfifo(pipe)
        # It has the project open and waits for its document.
        with subprocess.Popen([PROGRAM, "import", self.project, pipe], stdout=subprocess.PIPE,
                              stderr=subprocess.PIPE) as other:
            self.addCleanup(other.kill)
            lock = self.project / "records.lock"
            self.wait_until(lambda: lock.read_text().startswith(f"{other.pid} "))
            refused = self.refused(3, "log", self.project, "--component", "LW", "--minutes", "5",
                                   "--note", "x", says=f"process {other.pid} ")
            self.assertIn("open for writing since 20", refused.err)
            self.assertIn(str(self.project), refused.err)
            self.assertEqual(self.ask("hours", self.project, "--json").json()["total"]["minutes"],
                             150)
            pipe.write_text(json.dumps(bench()), encoding="utf-8")
            self.assertEqual(other.wait(60), 0)
        self.ask("log", self.project, "--component", "LW", "--minutes", "5", "--note", "x")

    def test_a_program_that_was_killed_leaves_no_lock(self):
        self.make_project(bench())
        pipe = self.folder / "never.json"
        os.mkfifo(pipe)
        with subprocess.Popen([PROGRAM, "import", self.project, pipe]) as other:
            lock = self.project / "records.lock"
            self.wait_until(lambda: lock.read_text().startswith(f"{other.pid} "))
            other.kill()
        self.ask("log", self.project, "--component", "LW", "--minutes", "5", "--note", "x")
        self.ask("verify", self.project)

    def wait_until(self, happened):
        end = time.monotonic() + 60
        while not happened():
            self.assertLess(time.monotonic(), end)
            time.sleep(0.02)


class Output(TerminalTest):
    @unittest.skipUnless(os.path.exists("/dev/full"), "needs a device that is always full")
    def test_an_answer_that_cannot_be_written_is_an_error(self):
        self.make_project(bench())
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "hours", self.project], stdout=full,
                                  stderr=subprocess.PIPE, check=False)
        self.assertEqual(done.returncode, 3)

    @unittest.skipUnless(os.path.exists("/dev/full"), "needs a device that is always full")
    def test_a_change_whose_answer_cannot_be_written_is_told_to_be_made(self):
        self.make_project(bench())
        before = self.ask("hours", self.project, "--json").json()["total"]["minutes"]
        with open("/dev/full", "wb") as full:
            done = subprocess.run([PROGRAM, "log", self.project, "--component", "LW", "--minutes",
                                   "5", "--note", "Going on"], stdout=full,
                                  stderr=subprocess.PIPE, check=False)
        self.assertEqual(done.returncode, 3)
        self.assertIn(b"A change that was asked for is made all the same.", done.stderr)
        self.assertEqual(self.ask("hours", self.project, "--json").json()["total"]["minutes"],
                         before + 5)

    def test_an_export_that_cannot_be_written_is_an_error(self):
        self.make_project(bench())
        for name in ("no/such/folder/x.json", "no/such/folder/x.zip"):
            self.refused(3, "export", self.project, "--to", self.folder / name, says=name)
