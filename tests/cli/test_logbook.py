# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The builder's log, printed and read with programs that read PDF."""

import re
import subprocess

from documents import RIB, bench
from terminal import TerminalTest
from test_photos import picture


def in_words(minutes):
    return f"{minutes // 60} h {minutes % 60:02}"


class Logbook(TerminalTest):
    def setUp(self):
        super().setUp()
        self.make_project(bench())
        self.pdf = self.folder / "log.pdf"

    def test_sums_are_those_of_hours_by_date_and_by_part(self):
        hours = self.ask("hours", self.project, "--json").json()
        for by in ("date", "component"):
            answer = self.logbook("--by", by, "--json").json()
            self.assertEqual((answer["minutes"], answer["worker_minutes"], answer["entries"]),
                             (hours["total"]["minutes"], hours["total"]["worker_minutes"],
                              hours["total"]["sessions"]))
            text = self.text()
            for month, name in (("2025-12", "December 2025"), ("2026-01", "January 2026"),
                                ("2026-02", "February 2026")):
                total = next(m for m in hours["months"] if m["month"] == month)
                self.assertIn(self.row(name, total["minutes"], total["worker_minutes"],
                                       total["sessions"]), self.rows(text))
            wing = next(c for c in hours["components"] if c["id"] == 1)
            self.assertIn(self.row("LW Left wing", wing["own"]["minutes"],
                                   wing["with_below"]["minutes"], wing["with_below"]["sessions"]),
                          self.rows(text))
            self.assertIn(self.row("In all", hours["total"]["minutes"],
                                   hours["total"]["worker_minutes"], hours["total"]["sessions"]),
                          self.rows(text))

    def test_chapter_sums_add_up_to_all(self):
        self.logbook()
        sums = re.findall(r"^ *Sum +(\d+ h \d\d) ", self.text(), re.MULTILINE)
        self.assertEqual(sums, ["1 h 40", "0 h 30", "0 h 20"])

    def test_only_the_days_asked_for(self):
        answer = self.logbook("--from", "2026-01-03", "--until", "2026-02-01", "--json").json()
        self.assertEqual((answer["entries"], answer["minutes"]), (2, 50))
        self.assertNotIn("December 2025", self.text())
        self.refused(2, "logbook", self.project, "--to", self.pdf, "--from", "2026-02-30",
                     says="2026-02-30")
        self.refused(2, "logbook", self.project, "--to", self.pdf, "--from", "2026-02-03",
                     "--until", "2026-02-02", says="before")

    def test_late_entries_are_marked_and_others_are_not(self):
        self.ask("log", self.project, "--component", "LW", "--minutes", 45, "--began",
                 "2020-05-04", "--note", "Sorted old papers")
        self.ask("log", self.project, "--component", "LW", "--minutes", 5, "--note", "Swept up")
        answer = self.logbook("--json").json()
        self.assertEqual((answer["entries"], answer["late_entries"]), (6, 1))
        text = self.text()
        self.assertEqual(text.count("LATE"), 1)
        may = text.index("May 2020", text.index("The log by date", text.index("Sums") + 300))
        self.assertLess(may, text.index("LATE"))

    def test_photos_stand_with_the_work_and_can_be_left_out(self):
        path = self.write("a.jpg", picture(taken="2026:01:03 15:23:00"))
        self.ask("photos", self.project, path, "--component", "LW-R1")
        answer = self.logbook("--json").json()
        self.assertEqual((answer["pictures"], answer["missing_pictures"]), (1, 0))
        self.assertEqual(answer["unshown_characters"], "")
        self.assertEqual(self.text().count("Photo 1"), 2)
        listed = subprocess.run(["pdfimages", "-list", self.pdf], capture_output=True, text=True,
                                check=True).stdout
        self.assertEqual(listed.count("jpeg"), 1)
        self.assertEqual(self.logbook("--without-photos", "--json").json()["pictures"], 0)

    def test_every_page_has_number_and_hash_and_the_journal_says_so(self):
        answer = self.logbook("--json").json()
        entry = self.ask("journal", self.project, "--json").json()[-1]
        self.assertEqual((entry["kind"], entry["changes"]), ("printed", []))
        pages = self.text().rstrip("\f").split("\f")
        self.assertEqual(len(pages), answer["pages"])
        for number, page in enumerate(pages, 1):
            self.assertIn(entry["hash"][:16], page)
            self.assertIn(f"page {number} of {len(pages)}", page)
        checked = subprocess.run(["qpdf", "--check", self.pdf], capture_output=True, text=True,
                                 check=False)
        self.assertEqual(checked.returncode, 0, checked.stdout + checked.stderr)
        self.refused(1, "undo", self.project, says="nothing to undo")

    def test_an_empty_log_says_so(self):
        self.logbook("--from", "2030-01-01")
        self.assertIn("Nothing is on record", self.text())

    def test_a_place_that_cannot_be_written_is_an_error(self):
        self.refused(3, "logbook", self.project, "--to", self.folder / "no/such/folder.pdf",
                     says="no/such/folder.pdf")
        # What was not printed is not in the journal, where it would end what can be undone.
        self.assertNotEqual(self.ask("journal", self.project, "--json").json()[-1]["kind"],
                            "printed")

    def logbook(self, *options):
        return self.ask("logbook", self.project, "--to", self.pdf, *options)

    @staticmethod
    def row(name, first, second, entries):
        return (name, in_words(first), in_words(second), str(entries))

    @staticmethod
    def rows(text):
        """Lines of four columns, as tuples."""
        return {tuple(re.split(r" {2,}", line.strip().replace("\u00a0", " ").strip()))
                for line in text.splitlines()}

    def text(self):
        return subprocess.run(["pdftotext", "-layout", self.pdf, "-"], capture_output=True,
                              text=True, check=True).stdout
