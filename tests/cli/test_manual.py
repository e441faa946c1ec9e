# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The manual page and what the program answers."""

import re
from pathlib import Path

from documents import bench
from terminal import TerminalTest

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

    def test_every_key_of_these_answers_is_described(self):
        self.make_project(bench())
        verified = self.ask("verify", self.project, "--repair", "--json").json()
        row = self.ask("journal", self.project, "--json").json()[-1]
        ready = self.ask("ready", self.project, "--json").json()
        for part in (verified, verified["checked"], row, row["changes"][0], ready,
                     ready["closings"][0]):
            for key in part:
                self.assertIn(f'"{key}"', self.json)
