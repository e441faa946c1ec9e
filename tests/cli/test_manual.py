# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The manual page and what the program answers."""

import re
from pathlib import Path

from documents import LEFT_SKIN, bench
from terminal import TerminalTest
from test_photos import picture

PAGE = Path(__file__).resolve().parents[2] / "resources" / "desktop" / "lastrivet-cli.1"


class Manual(TerminalTest):
    def setUp(self):
        super().setUp()
        self.page = PAGE.read_text(encoding="utf-8")
        self.verbs, self.json = self.page.split(".SH JSON")
        self.json = self.json.split(".SH EXIT STATUS")[0]

    def test_every_verb_is_described_once(self):
        described = re.findall(r'^\.BI (\w+) " PROJECT', self.verbs, re.M)
        twice = {verb for verb in described if described.count(verb) > 1}
        # Two ways to print it stand one below the other.
        self.assertEqual(twice, {"packet"})
        listed = re.findall(r"(?m)^  (\w+) ", self.ask("--help").out.split("ubcommands:")[-1])
        self.assertIn("forecast", listed)
        for verb in listed:
            self.assertRegex(self.verbs, rf"(?m)^\.BI .*\b{verb}\b", verb)

    def test_no_line_of_words_is_taken_for_a_request(self):
        for line in self.page.splitlines():
            self.assertNotRegex(line, r"^'|^\.[^A-Za-z\\]", "troff would leave it out")

    def test_every_key_of_these_answers_is_described(self):
        self.make_project(bench())
        photo = self.write("a.jpg", picture())
        shelf = self.folder / "shelf"
        shelf.mkdir()
        self.is_described("photos", photo, "--component", "LW", "--json")
        self.is_described("photos", "--json")
        self.is_described("photos", "--all", "--shift", "1h", "--json")
        self.is_described("log", "--component", "LW", "--minutes", 5, "--note", "x", "--json")
        self.is_described("forecast", "--look-back", "--hours-per-week", 8, "--json")
        for verb in ("squawks", "ready", "hours", "credit"):
            self.is_described(verb, "--json")
        self.is_described("packet", "--closing", LEFT_SKIN, "--to", self.folder / "a.pdf",
                          "--small", "--json")
        self.is_described("packet", "--closing", LEFT_SKIN, "--folder", self.folder / "a", "--json")
        self.is_described("logbook", "--to", self.folder / "b.pdf", "--json")
        self.is_described("backup", "--to", shelf, "--json")
        self.is_described("verify", "--repair", "--json")
        rows = self.ask("journal", self.project, "--json").json()
        row = next(row for row in rows if row["changes"])
        for key in (*row, *row["changes"][0]):
            self.assertIn(f'"{key}"', self.of("journal"))

    def is_described(self, verb, *options):
        """Each key of an answer, wherever it stands in it, is in what the page says of the verb."""
        answer = self.ask(verb, self.project, *options).json()
        self.assertTrue(answer)
        for key in keys(answer):
            self.assertIn(f'"{key}"', self.of(verb), verb)

    def of(self, verb):
        part, = (part for part in self.json.split(".TP\n")[1:]
                 if re.search(rf"\b{verb}\b", part.splitlines()[0]))
        return part


def keys(answer):
    if isinstance(answer, dict):
        yield from answer
    inner = answer.values() if isinstance(answer, dict) else answer
    for value in inner if isinstance(answer, (dict, list)) else ():
        yield from keys(value)
