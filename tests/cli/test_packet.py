# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The inspection packet, looked at with programs that read PDF."""

import subprocess

from documents import LEFT_SKIN, RIGHT_SKIN, bench
from terminal import TerminalTest
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
        checked = subprocess.run(["qpdf", "--check", self.pdf], capture_output=True, text=True,
                                 check=False)
        self.assertEqual(checked.returncode, 0, checked.stdout + checked.stderr)
        text = self.text()
        self.assertIn("Left wing, lower skin", text)
        self.assertIn("Overdriven rivet", text)
        self.assertIn(f"/ {answer['pages']}", text.replace("of", "/"))

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

    def test_a_place_that_cannot_be_written_is_an_error(self):
        self.refused(3, "packet", self.project, "--closing", LEFT_SKIN, "--to",
                     self.folder / "no/such/folder.pdf", says="no/such/folder.pdf")

    def text(self):
        done = subprocess.run(["pdftotext", "-layout", self.pdf, "-"], capture_output=True,
                              text=True, check=True)
        return done.stdout
