# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Taking photographs in."""

import hashlib
import io

from PIL import Image

from documents import RIB, bench
from terminal import TerminalTest

TAKEN = "2026:03:14 15:23:00"


def picture(colour=(90, 120, 150), taken=TAKEN):
    image = Image.effect_noise((320, 240), 60).convert("RGB")
    image.paste(colour, (0, 0, 160, 240))
    exif = Image.Exif()
    exif[0x8769] = {0x9003: taken}  # DateTimeOriginal in the EXIF directory
    data = io.BytesIO()
    image.save(data, "JPEG", exif=exif)
    return data.getvalue()


def of_size(jpeg, width, height):
    """The picture with other numbers in its frame header (ITU-T T.81, B.2.2)."""
    at = jpeg.index(b"\xff\xc0") + 5
    return jpeg[:at] + height.to_bytes(2, "big") + width.to_bytes(2, "big") + jpeg[at + 4:]


class Photos(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())

    def test_are_copied_unchanged_and_linked_to_the_part(self):
        content = picture()
        path = self.write("IMG 0001.JPG", content)
        answer = self.ask("photos", self.project, path, "--component", "LW-R1", "--shows",
                          "interior", "--json").json()
        made, = answer["taken"]
        row, = self.database(f"SELECT file, sha256, taken_on, width, height FROM media"
                             f" WHERE id = {made}")
        self.assertEqual((self.project / row["file"]).read_bytes(), content)
        self.assertEqual(row["sha256"], hashlib.sha256(content).hexdigest())
        self.assertEqual((row["taken_on"], row["width"], row["height"]),
                         ("2026-03-14T15:23", 320, 240))
        self.assertRegex(row["file"], r"^photos/2026/2026-03-14_1523_nose-rib-1_[0-9a-f]+\.jpg$")
        self.assertEqual(self.database(f"SELECT subject, id FROM media_links"
                                       f" WHERE media_id = {made}"),
                         [{"subject": "component", "id": RIB}])
        self.assertEqual(self.database(f"SELECT item FROM media_shows WHERE media_id = {made}"),
                         [{"item": "interior"}])
        self.ask("verify", self.project)

    def test_the_same_picture_is_taken_in_once(self):
        first = self.write("a.jpg", picture())
        second = self.write("b.jpg", first.read_bytes())
        made, = self.ask("photos", self.project, first, "--json").json()["taken"]
        answer = self.ask("photos", self.project, second, "--json").json()
        self.assertEqual((answer["taken"], answer["already_there"]), ([], [made]))

    def test_a_damaged_file_is_put_back_when_its_original_comes_again(self):
        content = picture()
        path = self.write("a.jpg", content)
        self.ask("photos", self.project, path)
        row, = self.database("SELECT file FROM media")
        file = self.project / row["file"]
        file.write_bytes(content[:-50])
        self.assertEqual(self.run_program("verify", self.project).code, 1)
        text = self.ask("photos", self.project, path).out
        self.assertIn(f"The file {row['file']} was damaged and is there again", text)
        self.assertEqual(file.read_bytes(), content)
        kept, = (self.project / "backups" / "damaged").iterdir()
        self.assertEqual(kept.read_bytes(), content[:-50])
        self.ask("verify", self.project)
        answer = self.ask("photos", self.project, path, "--json").json()
        self.assertEqual((len(answer["already_there"]), answer["put_back"]), (1, 0))

    def test_what_is_no_picture_is_named_and_the_others_are_taken(self):
        good = self.write("good.jpg", picture())
        whole = picture((200, 10, 10))
        bad = {"text.jpg": b"Dear Ada, this is no picture.", "empty.jpg": b"",
               "cut.jpg": whole[:len(whole) // 2]}
        paths = [self.write(name, content) for name, content in bad.items()]
        paths.append(self.folder / "none.jpg")
        answer = self.run_program("photos", self.project, good, *paths, "--json")
        self.assertEqual(answer.code, 3)
        self.assertEqual((len(answer.json()["taken"]), answer.json()["failed"]), (1, 4))
        lines = answer.err.splitlines()
        self.assertEqual(len(lines), 4, answer.err)
        for name in (*bad, "none.jpg"):
            self.assertEqual(sum(name in line for line in lines), 1, name)
        self.assertEqual(len([p for p in (self.project / "photos").rglob("*") if p.is_file()]), 1)
        self.ask("verify", self.project)

    def test_a_picture_of_300_megapixels_brings_nothing_down(self):
        huge = self.write("huge.jpg", of_size(picture(), 20_000, 15_000))
        answer = self.run_program("photos", self.project, huge)
        self.assertIn(answer.code, (0, 3))
        self.assertLessEqual(len(answer.err.splitlines()), 1)
        self.assertEqual(self.run_program("verify", self.project).code, 0)

    def test_wrong_words_change_nothing(self):
        path = self.write("a.jpg", picture())
        self.refused(2, "photos", self.project, path, "--component", "XX", says="XX")
        self.refused(2, "photos", self.project, path, "--shows", "aliens", says="aliens")
        self.assertEqual(self.database("SELECT count(*) AS n FROM media"), [{"n": 0}])

    def test_an_intake_can_be_undone(self):
        path = self.write("a.jpg", picture())
        self.ask("photos", self.project, path)
        self.ask("undo", self.project)
        self.assertEqual(self.database("SELECT count(*) AS n FROM media"), [{"n": 0}])
        self.ask("verify", self.project)

    def test_a_camera_clock_that_stood_wrong_is_told(self):
        ahead = self.write("a.jpg", picture((1, 2, 3), "2190:01:01 10:00:00"))
        good = self.write("b.jpg", picture((4, 5, 6), "2024:03:14 15:23:00"))
        text = self.ask("photos", self.project, ahead, good).out
        self.assertIn("Dated ahead, or years before the project: 1 file;", text)
        text = self.ask("photos", self.project, "--from", "2190-01-01", "--shift", "1d").out
        self.assertIn("Dated ahead of now: 1 photo.", text)
        text = self.ask("photos", self.project, "--until", "2189-12-31", "--shift", "-1d").out
        self.assertNotIn("Dated ahead", text)

    def times(self):
        return [row["taken_on"] for row in
                self.database("SELECT taken_on FROM media ORDER BY taken_on")]

    def test_a_wrong_clock_is_set_right_for_all_at_once(self):
        first = self.write("a.jpg", picture((1, 2, 3), "2026:03:14 15:23:00"))
        second = self.write("b.jpg", picture((4, 5, 6), "2026:03:14 23:30:00"))
        other = self.write("c.jpg", picture((7, 8, 9), "2026:03:20 10:00:00"))
        self.ask("photos", self.project, first, second, other)
        before = {p: p.read_bytes() for p in (self.project / "photos").rglob("*.jpg")}
        answer = self.ask("photos", self.project, "--until", "2026-03-14", "--shift", "1h",
                          "--json").json()
        self.assertEqual((answer["minutes"], len(answer["moved"]), answer["left"]), (60, 2, []))
        self.assertEqual(self.times(),
                         ["2026-03-14T16:23", "2026-03-15T00:30", "2026-03-20T10:00"])
        self.refused(2, "photos", self.project, "--shift", "-6h", says="3 photos, say --all")
        self.refused(2, "photos", self.project, "--all", "--from", "2026-03-14", "--shift", "-6h",
                     says="either")
        text = self.ask("photos", self.project, "--all", "--shift", "-6h").out
        self.assertNotIn("left alone", text)
        self.assertIn("3 photos: times moved back by 6 h 00.", text)
        self.assertIn("First: 2026-03-14T16:23 becomes 2026-03-14T10:23.", text)
        self.ask("undo", self.project)
        self.ask("photos", self.project, "--first-taken", "2026-03-13T16:23", "--all")
        self.assertEqual(self.times(),
                         ["2026-03-13T16:23", "2026-03-14T00:30", "2026-03-19T10:00"])
        self.assertEqual({p: p.read_bytes() for p in (self.project / "photos").rglob("*.jpg")},
                         before)
        self.ask("verify", self.project)

    def test_times_are_moved_by_what_makes_sense_or_not_at_all(self):
        path = self.write("a.jpg", picture())
        self.ask("photos", self.project, path)
        self.refused(2, "photos", self.project, "--shift", "soon", says="soon")
        self.refused(2, "photos", self.project, path, "--shift", "1h", says="FILE")
        self.refused(2, "photos", self.project, path, "--from", "2026-03-14", says="FILE")
        self.refused(2, "photos", self.project, "--shift", "1h", "--first-taken", "2026-03-14",
                     says="one of them")
        self.refused(2, "photos", self.project, "--shift", "100000d", says="2199")
        # A variable of the shell that is not set chooses nothing, and not everything.
        for option in ("--component", "--from", "--until"):
            self.refused(2, "photos", self.project, "--shift", "1h", option, "", says="empty")
        self.refused(2, "photos", self.project, "--component", "LW", "--first-taken",
                     "2026-03-14T10:00", says="none")
        self.assertEqual(self.times(), ["2026-03-14T15:23"])
