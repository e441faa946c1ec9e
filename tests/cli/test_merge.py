# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Two copies of a project become one again."""

import json
import shutil

from documents import bench
from terminal import TerminalTest


class Merge(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.other = self.folder / "Kim" / "Bench.lastrivet"
        shutil.copytree(self.project, self.other)

    def log(self, project, note, part="RW"):
        self.ask("log", project, "--component", part, "--minutes", "30", "--note", note)

    def exported(self, project):
        path = self.folder / "state.json"
        self.ask("export", project, "--to", path)
        return path.read_bytes()

    def test_what_both_did_is_in_both_and_the_same(self):
        self.log(self.project, "Drilled the spar")
        self.log(self.other, "Primed the ribs", "LW")
        done = self.ask("merge", self.project, self.other, "--json").json()
        self.assertEqual((done["changes"], done["conflicts"], done["missing_files"]), (1, [], []))
        self.ask("merge", self.other, self.project)
        self.assertEqual(self.exported(self.project), self.exported(self.other))
        notes = self.exported(self.project).decode()
        self.assertIn("Drilled the spar", notes)
        self.assertIn("Primed the ribs", notes)
        for project in (self.project, self.other):
            self.ask("verify", project)

    def test_a_second_time_there_is_nothing_new(self):
        self.log(self.other, "Primed the ribs")
        self.ask("merge", self.project, self.other)
        before = (self.project / "records.db").read_bytes()
        self.assertIn("Nothing new", self.ask("merge", self.project, self.other).out)
        self.assertEqual((self.project / "records.db").read_bytes(), before)

    def test_a_database_file_is_a_copy_too(self):
        self.log(self.other, "Primed the ribs")
        alone = self.folder / "records (copy).db"
        shutil.copy(self.other / "records.db", alone)
        self.ask("merge", self.project, alone)
        self.assertIn("Primed the ribs", self.exported(self.project).decode())

    def test_another_project_and_no_project_are_refused_and_nothing_changes(self):
        stranger = self.folder / "Stranger.lastrivet"
        self.ask("new", stranger, "--name", "Else", "--profile", "plain")
        before = self.exported(self.project)
        self.refused(3, "merge", self.project, stranger, says="not copies of one project")
        self.refused(3, "merge", self.project, self.folder / "nowhere",
                     says="nowhere is not a Lastrivet project: it has no records.db")
        self.refused(3, "merge", self.project, self.folder, says="not a Lastrivet project")
        self.assertEqual(self.exported(self.project), before)

    def test_of_two_copies_the_one_that_is_damaged_is_named(self):
        path = self.other / "records.db"
        content = bytearray(path.read_bytes())
        content[100:4000] = bytes(3900)
        path.write_bytes(content)
        answer = self.refused(3, "merge", self.project, self.other, says="damaged")
        self.assertIn(str(self.other), answer.err)
        self.assertNotIn(str(self.project), answer.err)


class Conflicts(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.other = self.folder / "Kim" / "Bench.lastrivet"
        shutil.copytree(self.project, self.other)
        # The last thing done goes in one copy, and is worked on in the other.
        self.ask("log", self.project, "--component", "RW", "--minutes", "5", "--note", "Swept")
        shutil.rmtree(self.other)
        shutil.copytree(self.project, self.other)
        self.ask("undo", self.project)
        session = self.ask("journal", self.other, "--json").json()[-1]["changes"][0]["id"]
        self.photo_on(session)

    def photo_on(self, session):
        """A photograph that names the session, taken in by the other copy."""
        document = self.folder / "photo.json"
        self.ask("export", self.other, "--to", document)
        records = json.loads(document.read_text(encoding="utf-8"))
        records["media"].append({"id": 77001, "kind": "photo", "file": "photos/77001.jpg",
                                 "links": [{"subject": "work_session", "id": session}]})
        document.write_text(json.dumps(records), encoding="utf-8")
        answer = self.run_program("import", self.other, document)
        self.assertEqual(answer.code, 0, answer.err)

    def test_what_was_taken_back_and_named_elsewhere_is_left_to_decide(self):
        answer = self.run_program("merge", self.project, self.other, "--json")
        self.assertEqual(answer.code, 1)
        self.assertIn("77001.jpg: neither copy has it", answer.err)
        (conflict,) = answer.json()["conflicts"]
        self.assertEqual((conflict["kind"], conflict["record"]), ("existence", "work_session"))
        listed = self.run_program("conflicts", self.project, "--json")
        self.assertEqual((listed.code, listed.json()), (1, [conflict]))
        self.refused(2, "conflicts", self.project, "--keep", "5", says="nothing that is left")
        # A number that is wrong leaves also the right one undecided.
        self.refused(2, "conflicts", self.project, "--keep", conflict["id"], "--take", "5",
                     says="nothing that is left")
        self.refused(2, "conflicts", self.project, "--keep", conflict["id"], "--take",
                     conflict["id"], says="twice")
        self.assertIn("nothing to decide",
                      self.ask("conflicts", self.project, "--keep", conflict["id"]).out)
        self.ask("merge", self.other, self.project)
        (decided,) = self.ask("conflicts", self.other, "--all", "--json").json()
        self.assertEqual(decided["decision"], "kept")
