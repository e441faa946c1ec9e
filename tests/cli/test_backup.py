# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Copies of a whole project on another disk, and the way back."""

import hashlib
import resource
import shutil
import signal
import subprocess

from documents import bench
from terminal import PROGRAM, TerminalTest

SKETCH = b"%PDF-1.4\n% a sketch of the left wing\n%%EOF\n"
LETTER = b"%PDF-1.4\n% a letter\n%%EOF\n"


class BackupTest(TerminalTest):
    def setUp(self):
        super().setUp()
        document = bench()
        document["media"] = [self.paper(70, "documents/sketch.pdf", SKETCH),
                             self.paper(71, "documents/2026/letter.pdf", LETTER)]
        self.make_project(document)
        self.shelf = self.folder / "disk"
        self.shelf.mkdir()
        self.place = self.shelf / "Bench.lastrivet"

    def paper(self, number, name, content):
        self.write(name, content)
        return {"id": number, "kind": "document", "file": name, "bytes": len(content),
                "sha256": hashlib.sha256(content).hexdigest(), "imported_on": "2026-01-01"}

    def back_up(self, *more):
        return self.ask("backup", self.project, "--to", self.shelf, "--json", *more).json()

    def log(self, note):
        self.ask("log", self.project, "--component", "LW", "--minutes", 5, "--note", note)

    def notes(self, project):
        export = self.folder / "notes.json"
        self.ask("export", project, "--to", export)
        return export.read_text(encoding="utf-8")

    def files(self, folder):
        """Every file of a project and its hash, but what changes by being opened."""
        return {str(path.relative_to(folder)): hashlib.sha256(path.read_bytes()).hexdigest()
                for path in sorted(folder.rglob("*"))
                if path.is_file() and path.name != "records.lock"}


class Backup(BackupTest):
    def test_is_a_whole_project_that_verifies(self):
        report = self.back_up()
        self.assertEqual((report["files_copied"], report["files_kept"], report["bytes_copied"]),
                         (2, 0, len(SKETCH) + len(LETTER)))
        self.assertEqual([report[name] for name in ("missing", "unreadable", "altered", "damaged")],
                         [[], [], [], []])
        self.assertEqual(report["place"], str(self.place))
        self.assertEqual((self.place / "documents/2026/letter.pdf").read_bytes(), LETTER)
        self.ask("verify", self.place)
        self.assertEqual(self.notes(self.place), self.notes(self.project))
        self.assertEqual(report["journal_hash"],
                         self.ask("journal", self.place, "--json").json()[-1]["hash"])

    def test_of_a_project_that_cannot_be_read_says_which(self):
        (self.project / "records.db").write_bytes(b"no database at all " * 500)
        self.refused(3, "backup", self.project, "--to", self.shelf, says=str(self.project))

    def test_of_a_project_does_not_blame_it_for_a_backup_that_cannot_be_read(self):
        self.back_up()
        database = self.place / "records.db"
        database.write_bytes(database.read_bytes().replace(b"LRvt", b"Else", 1))
        answer = self.refused(3, "backup", self.project, "--to", self.shelf, says=str(self.place))
        self.assertNotIn(f"{self.project}: ", answer.err)

    def test_over_one_with_a_damaged_database_is_made_and_keeps_that(self):
        self.back_up()
        database = self.place / "records.db"
        for left in (database.read_bytes()[:-5000], b"", b"no database at all " * 500):
            database.write_bytes(left)
            answer = self.run_program("backup", self.project, "--to", self.shelf, "--json")
            self.assertEqual(answer.code, 0)
            kept = answer.json()["damaged_database"]
            self.assertEqual((self.place / kept).read_bytes(), left)
            self.assertEqual(answer.json()["set_aside"], [])
            self.assertIn(f"is kept as {self.place / kept}.", answer.err)
            self.ask("verify", self.place)
        self.assertEqual(len(list((self.place / "backups").glob("records-damaged-*.db"))), 3)
        self.assertEqual(self.back_up()["damaged_database"], "")

    def test_over_a_damaged_one_loses_no_file_that_lay_there(self):
        self.back_up()
        (self.place / "records.db").write_bytes(b"")
        (self.place / "documents/sketch.pdf").write_bytes(b"a sketch of somebody else")
        answer = self.run_program("backup", self.project, "--to", self.shelf, "--json")
        report = answer.json()
        self.assertEqual(answer.code, 0)
        self.assertEqual(report["set_aside"], ["documents/sketch-set-aside-1.pdf"])
        self.assertEqual((self.place / report["set_aside"][0]).read_bytes(),
                         b"a sketch of somebody else")
        self.assertEqual((self.place / "documents/sketch.pdf").read_bytes(), SKETCH)

    def test_copies_only_what_is_new_and_keeps_the_state_before(self):
        self.back_up()
        self.log("Deburred after the first backup")
        report = self.back_up()
        self.assertEqual((report["files_copied"], report["files_kept"]), (0, 2))
        self.assertIn("after the first backup", self.notes(self.place))
        before, = (self.place / "backups").glob("records-*.db")
        earlier = self.folder / "Earlier.lastrivet"
        self.ask("restore", before, "--to", earlier)
        self.assertNotIn("after the first backup", self.notes(earlier))

    def test_can_be_named_by_its_own_folder_and_told_in_words(self):
        self.back_up()
        answer = self.ask("backup", self.project, "--to", f"{self.place}/")
        self.assertIn("0 files copied and read back, 2 there already", answer.out)
        self.assertFalse((self.place / "Bench.lastrivet").exists())

    def test_finds_and_mends_what_rotted_on_the_disk(self):
        self.back_up()
        rotten = self.place / "documents/sketch.pdf"
        rotten.write_bytes(SKETCH.replace(b"left", b"1eft"))
        self.assertEqual(self.back_up()["damaged"], [])
        answer = self.run_program("backup", self.project, "--to", self.shelf, "--every-file",
                                  "--json")
        self.assertEqual((answer.code, answer.json()["damaged"]), (0, ["documents/sketch.pdf"]))
        self.assertIn("documents/sketch.pdf", answer.err)
        self.assertEqual(rotten.read_bytes(), SKETCH)

    def test_a_damaged_original_never_replaces_a_good_copy(self):
        self.back_up()
        (self.project / "documents/sketch.pdf").write_bytes(b"no longer a sketch")
        (self.project / "documents/2026/letter.pdf").unlink()
        for more in ([], ["--every-file"]):
            answer = self.run_program("backup", self.project, "--to", self.shelf, "--json", *more)
            self.assertEqual((answer.code, answer.json()["altered"]), (1, ["documents/sketch.pdf"]))
            self.assertEqual(answer.json()["files_copied"], 0)
            self.assertIn("documents/sketch.pdf", answer.err)
        self.assertEqual((self.place / "documents/sketch.pdf").read_bytes(), SKETCH)
        self.assertEqual((self.place / "documents/2026/letter.pdf").read_bytes(), LETTER)

    def test_files_that_are_missing_or_altered_are_named_and_the_others_copied(self):
        (self.project / "documents/sketch.pdf").write_bytes(b"no longer a sketch")
        (self.project / "documents/2026/letter.pdf").unlink()
        answer = self.run_program("backup", self.project, "--to", self.shelf, "--json")
        self.assertEqual(answer.code, 1)
        self.assertEqual((answer.json()["missing"], answer.json()["altered"]),
                         (["documents/2026/letter.pdf"], ["documents/sketch.pdf"]))
        self.assertEqual(len(answer.err.splitlines()), 2)

    def test_a_disk_that_takes_no_more_leaves_the_backup_before_whole(self):
        self.back_up()
        before = self.files(self.place)
        big = b"\xff\xd8" + bytes(3_000_000)
        self.write("documents/big.pdf", big)
        addition = {**bench(), "media": [self.paper(72, "documents/big.pdf", big)]}
        self.ask("import", self.project, self.write("more.json", addition))

        def limit():
            # A write beyond the limit then fails like one on a full disk.
            signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
            resource.setrlimit(resource.RLIMIT_FSIZE, (2_000_000, 2_000_000))

        done = subprocess.run([PROGRAM, "backup", self.project, "--to", self.shelf],
                              capture_output=True, text=True, preexec_fn=limit, check=False)
        self.assertEqual((done.returncode, done.stdout), (3, ""))
        self.assertIn("The backup was not finished: big.pdf could not be saved", done.stderr)
        self.assertIn("stays as it was", done.stderr)
        self.assertEqual(self.files(self.place), before)
        self.assertEqual(self.back_up()["files_copied"], 1)
        self.ask("verify", self.place)

    def test_refuses_what_it_would_destroy(self):
        self.refused(3, "backup", self.project, "--to", self.folder / "unplugged",
                     says="plug its disk in")
        self.refused(3, "backup", self.project, "--to", self.folder, says="lies inside")
        self.refused(3, "backup", self.project, "--to", self.project, says="lies inside")
        self.place.mkdir()
        (self.place / "taxes.txt").write_text("mine")
        self.refused(3, "backup", self.project, "--to", self.shelf, says="no backup of this")
        self.assertEqual(self.files(self.place).keys(), {"taxes.txt"})
        self.refused(2, "backup", self.project, says="--to")

    def test_refuses_a_backup_that_somebody_worked_in(self):
        self.back_up()
        self.ask("log", self.place, "--component", "LW", "--minutes", 5, "--note", "At the disk")
        before = self.notes(self.place)
        self.refused(3, "backup", self.project, "--to", self.shelf,
                     says="changes that this project has not")
        self.assertEqual(self.notes(self.place), before)


class Restore(BackupTest):
    def setUp(self):
        super().setUp()
        self.back_up()
        self.again = self.folder / "Again.lastrivet"

    def test_gives_the_project_back_and_it_can_be_worked_in(self):
        shutil.rmtree(self.project)
        report = self.ask("restore", self.place, "--to", self.again, "--json").json()
        self.assertEqual((report["place"], report["files_copied"]), (str(self.again), 2))
        self.ask("verify", self.again)
        self.assertEqual(self.notes(self.again), self.notes(self.place))
        self.ask("log", self.again, "--component", "LW", "--minutes", 5, "--note", "Going on")
        self.assertIn("Going on", self.notes(self.again))

    def test_never_goes_over_anything(self):
        before = self.files(self.project)
        self.refused(3, "restore", self.place, "--to", self.project, says="exists already")
        self.assertEqual(self.files(self.project), before)
        self.refused(3, "restore", self.place, "--to", self.place / "inside", says="lies inside")
        self.again.mkdir()
        self.ask("restore", self.place, "--to", self.again)

    def test_what_is_no_backup_leaves_nothing_behind(self):
        self.refused(3, "restore", self.folder / "gone", "--to", self.again, says="gone")
        text = self.write("text.db", "no database at all, and not for want of bytes" * 10)
        self.refused(3, "restore", text, "--to", self.again, says="not a Lastrivet project")
        self.assertFalse(self.again.exists())
        self.assertFalse((self.folder / "Again.lastrivet.unfinished").exists())

    def test_goes_on_after_an_interruption_but_not_over_a_folder_of_somebody_else(self):
        unfinished = self.folder / "Again.lastrivet.unfinished"
        unfinished.mkdir()
        (unfinished / "taxes.txt").write_text("mine")
        self.refused(3, "restore", self.place, "--to", self.again, says="in the way")
        self.assertEqual((unfinished / "taxes.txt").read_text(), "mine")
        (unfinished / "records.lock").write_text("1 0 elsewhere\n")
        self.refused(3, "restore", self.place, "--to", self.again, says="in the way")
        (unfinished / ".tmp-1-restoring").write_text("")
        self.ask("restore", self.place, "--to", self.again)
        self.assertFalse(unfinished.exists())
        self.ask("verify", self.again)

    def test_a_file_that_rotted_in_the_backup_is_named(self):
        (self.place / "documents/sketch.pdf").write_bytes(SKETCH.replace(b"left", b"1eft"))
        answer = self.run_program("restore", self.place, "--to", self.again, "--json")
        self.assertEqual((answer.code, answer.json()["altered"]), (1, ["documents/sketch.pdf"]))
        self.assertTrue((self.again / "documents/2026/letter.pdf").exists())
