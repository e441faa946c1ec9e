# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The inspection packet, looked at with programs that read PDF."""

import io
import subprocess

from PIL import Image

from documents import LEFT_SKIN, RIGHT_SKIN, bench
from terminal import PROGRAM, TerminalTest
from test_photos import picture


class Packet(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.pdf = self.folder / "packet.pdf"

    def test_is_a_whole_pdf_that_names_what_stands_in_the_way(self):
        path = self.write("a.jpg", picture())
        self.ask("photos", self.project, path, "--component", "LW-R1", "--shows", "interior")
        answer = self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf,
                          "--json").json()
        self.assertEqual((answer["closings"], answer["pictures"], answer["missing_pictures"]),
                         ([LEFT_SKIN], 1, 0))
        self.assertEqual(answer["unshown_characters"], "")
        checked = subprocess.run(["qpdf", "--check", self.pdf], capture_output=True, text=True,
                                 check=False)
        self.assertEqual(checked.returncode, 0, checked.stdout + checked.stderr)
        text = self.text()
        self.assertIn("Left wing, lower skin", text)
        self.assertIn("Overdriven rivet", text)
        self.assertEqual(text.count("\f"), answer["pages"])
        self.assertRegex(text, rf"page 1 of {answer['pages']}\b")

    def test_the_journal_says_so_and_its_hash_stands_at_the_foot(self):
        self.ask("packet", self.project, "--closing", LEFT_SKIN, RIGHT_SKIN, "--to", self.pdf)
        entry = self.ask("journal", self.project, "--json").json()[-1]
        self.assertEqual((entry["kind"], entry["changes"]), ("printed", []))
        self.assertIn(entry["hash"][:12], self.text())
        self.refused(1, "undo", self.project, says="nothing to undo")

    def test_comes_on_letter_paper_too(self):
        self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf, "--paper",
                 "Letter")
        told = subprocess.run(["pdfinfo", self.pdf], capture_output=True, text=True, check=True)
        self.assertIn("612 x 792 pts", told.stdout)

    def test_paper_is_named_in_any_case(self):
        self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf, "--paper",
                 "letter", "--language", "DE")
        told = subprocess.run(["pdfinfo", self.pdf], capture_output=True, text=True, check=True)
        self.assertIn("612 x 792 pts", told.stdout)

    def test_speaks_the_language_that_is_asked_for(self):
        # The words that no packet may lose: it is not an approval.
        for code, point, words in (("de", "Haltepunkt", "keine Zulassung"),
                                   ("fr", "Point d’arrêt", "pas une approbation"),
                                   ("en", "Hold point", "not an approval")):
            self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf,
                     "--language", code)
            text = self.text()
            self.assertIn(point.lower(), text.lower())
            self.assertIn(words, " ".join(text.split()))
            self.assertIn("Left wing, lower skin", text)
            self.pdf.unlink()
        self.refused(2, "packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf,
                     "--language", "xx", says="--language")

    def test_a_place_that_cannot_be_written_is_an_error(self):
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--to",
                     self.folder / "no/such/folder.pdf", says="no/such/folder.pdf")
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--folder",
                     self.folder / "no/such/folder", says="no/such/folder")
        self.assertNotEqual(self.ask("journal", self.project, "--json").json()[-1]["kind"],
                            "printed")

    def test_what_the_project_keeps_is_never_written_over(self):
        photo = self.write("a.jpg", picture())
        self.ask("photos", self.project, photo)
        kept, = (self.project / "photos").rglob("*.jpg")
        before = self.ask("journal", self.project).out
        for place in (self.project / "records.db", kept):
            with self.subTest(place=place):
                content = place.read_bytes()
                self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--to", place,
                             says="is what a Lastrivet project keeps")
                self.refused(3, "logbook", self.project, "--to", place,
                             says="is what a Lastrivet project keeps")
                self.assertEqual(place.read_bytes(), content)
        self.assertEqual(self.ask("journal", self.project).out, before)
        self.ask("verify", self.project)

    def test_as_a_folder_has_sums_that_sha256sum_accepts(self):
        content = picture()
        path = self.write("a.jpg", content)
        self.ask("photos", self.project, path, "--component", "LW-R1", "--shows", "interior")
        folder = self.folder / "Packet"
        answer = self.ask("packet", self.project, "--closing", LEFT_SKIN, "--folder", folder,
                          "--json").json()
        self.assertEqual((answer["folder"], answer["full_size"], answer["missing_files"],
                          answer["altered_files"]), (str(folder), 1, [], []))
        checked = subprocess.run(["sha256sum", "--strict", "-c", "SHA256SUMS"], cwd=folder,
                                 capture_output=True, text=True, check=False)
        self.assertEqual(checked.returncode, 0, checked.stdout + checked.stderr)
        self.assertEqual(checked.stdout.count(": OK"), 2)
        photo, = (folder / "photos").iterdir()
        self.assertEqual(photo.read_bytes(), content)
        before = self.ask("journal", self.project).out
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--folder", folder,
                     says="something is there already")
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--to", folder,
                     says="a folder has that name")
        self.assertEqual(self.ask("journal", self.project).out, before)

    def test_to_send_stays_under_15_mb(self):
        answer = self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf,
                          "--small", "--json").json()
        self.assertLess(self.pdf.stat().st_size, 15_000_000)
        self.assertEqual((answer["bytes"], answer["left_out"]), (self.pdf.stat().st_size, 0))
        self.assertIn("This is the version to send", self.text())

    def test_goes_to_one_place(self):
        both = ["--to", self.pdf, "--folder", self.folder / "Packet"]
        self.refused(2, "packet", self.project, "--closing", LEFT_SKIN, *both, says="--folder")
        self.refused(2, "packet", self.project, "--closing", LEFT_SKIN, says="--to")
        self.refused(2, "packet", self.project, "--closing", LEFT_SKIN, "--folder",
                     self.folder / "Packet", "--small", says="--folder")

    def test_an_empty_argument_is_one_too_many(self):
        self.refused(2, "packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf, "",
                     says="not expected")
        self.refused(2, "packet", self.project, "--folder", "--folder", "", "--json", "more",
                     says="packet --help")
        self.assertFalse(self.pdf.exists())

    def test_leaves_nothing_behind_on_a_disk_that_takes_no_more(self):
        large = Image.effect_noise((2600, 2600), 90)
        data = io.BytesIO()
        large.save(data, "JPEG", quality=95)
        self.assertGreater(len(data.getvalue()), 3_000_000)
        path = self.write("large.jpg", data.getvalue())
        self.ask("photos", self.project, path, "--component", "LW-R1", "--shows", "interior")
        self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf)
        place = self.folder / "elsewhere"
        place.mkdir()
        # A file longer than this cannot be written: EFBIG takes the same way as a full disk.
        limit = "trap '' XFSZ; ulimit -f 2500; exec \"$@\""
        done = subprocess.run(["bash", "-c", limit, "-", PROGRAM, "packet", self.project,
                               "--closing", str(LEFT_SKIN), "--folder", place / "Packet"],
                              capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, 3, done.stderr)
        self.assertEqual(len(done.stderr.splitlines()), 1, done.stderr)
        self.assertIn("Nothing was left behind", done.stderr)
        self.assertEqual(list(place.iterdir()), [])

    def test_that_found_no_room_is_not_in_the_journal(self):
        for number in range(3):
            data = io.BytesIO()
            exif = Image.Exif()
            exif[0x8769] = {0x9003: f"2026:01:03 15:23:0{number}"}  # of a day in the log
            Image.effect_noise((1600, 1600), 90).save(data, "JPEG", quality=95, exif=exif)
            path = self.write(f"noise-{number}.jpg", data.getvalue())
            self.ask("photos", self.project, path, "--component", "LW-R1", "--shows", "interior")
        self.ask("packet", self.project, "--closing", LEFT_SKIN, "--to", self.pdf)
        size = self.pdf.stat().st_size
        self.assertGreater(size, 4_000_000, "the database must find room where the paper does not")
        before = self.ask("journal", self.project).out
        place = self.folder / "elsewhere"
        place.mkdir()
        limit = f"trap '' XFSZ; ulimit -f {size // 2048}; exec \"$@\""
        for paper in (("packet", "--closing", LEFT_SKIN, "--to", place / "packet.pdf"),
                      ("packet", "--closing", LEFT_SKIN, "--folder", place / "Packet"),
                      ("logbook", "--to", place / "log.pdf")):
            with self.subTest(paper=paper):
                verb, *more = map(str, paper)
                done = subprocess.run(["bash", "-c", limit, "-", PROGRAM, verb, self.project,
                                       *more], capture_output=True, text=True, check=False)
                self.assertEqual(done.returncode, 3, done.stderr)
                self.assertIn(str(paper[-1]), done.stderr)
                self.assertIn("was not written", done.stderr)
                self.assertEqual(list(place.iterdir()), [])
                self.assertEqual(self.ask("journal", self.project).out, before)
        self.ask("verify", self.project)

    def text(self):
        done = subprocess.run(["pdftotext", "-layout", self.pdf, "-"], capture_output=True,
                              text=True, check=True)
        return done.stdout
