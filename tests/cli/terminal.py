# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Runs the terminal program, each time in a folder of its own."""

import json
import os
import shutil
import subprocess
import tempfile
import unittest
from pathlib import Path

PROGRAM = Path(os.environ["LASTRIVET_CLI"])


class Answer:
    """What one run of the program came to."""

    def __init__(self, done):
        self.code = done.returncode
        self.out = done.stdout
        self.err = done.stderr

    def json(self):
        """One document from the first character on, and a newline after it."""
        assert self.out[:1] in ("{", "[") and self.out[-2:] in ("}\n", "]\n"), self.out
        return json.loads(self.out)


class TerminalTest(unittest.TestCase):
    """A test with a folder of its own that is gone afterwards."""

    maxDiff = None

    def setUp(self):
        self.folder = Path(tempfile.mkdtemp(prefix="lastrivet-cli-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.project = self.folder / "Bench.lastrivet"

    def run_program(self, *arguments, environment=None, folder=None):
        done = subprocess.run([PROGRAM, *map(str, arguments)], capture_output=True, timeout=120,
                              env={**os.environ, **(environment or {})}, cwd=folder, check=False)
        done.stdout = done.stdout.decode("utf-8")
        done.stderr = done.stderr.decode("utf-8")
        return Answer(done)

    def ask(self, *arguments, **more):
        """A run that has to succeed without a complaint."""
        answer = self.run_program(*arguments, **more)
        self.assertEqual((answer.code, answer.err), (0, ""), arguments)
        return answer

    def refused(self, code, *arguments, says, **more):
        """A run that has to fail: one line that says what is wrong, and no answer."""
        answer = self.run_program(*arguments, **more)
        self.assertEqual(answer.code, code, f"{arguments}: {answer.err}")
        lines = answer.err.splitlines()
        self.assertEqual(len(lines), 1, answer.err)
        self.assertEqual(answer.out, "")
        self.assertIn(says, lines[0])
        self.assertNotRegex(lines[0], r"terminate|what\(\)|std::|\.cpp|0x[0-9a-f]{6}")
        return answer

    def write(self, name, content):
        path = self.folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        if isinstance(content, (dict, list)):
            content = json.dumps(content, indent=1)
        path.write_bytes(content if isinstance(content, bytes) else content.encode("utf-8"))
        return path

    def make_project(self, document):
        """The project, made of a document."""
        path = self.write("made-of.json", document)
        self.ask("import", self.project, path, "--create")
        return self.project

    def database(self, query):
        """Rows of the project's database, read by SQLite's own shell."""
        done = subprocess.run(["sqlite3", "-readonly", "-json", self.project / "records.db", query],
                              capture_output=True, text=True, check=True)
        return json.loads(done.stdout or "[]")
