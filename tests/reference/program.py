# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The programs that are compared with the reference."""

import json
import subprocess
from pathlib import Path


class ProgramFailed(Exception):
    """The program did not answer; the message is what it said."""


def _run(arguments):
    done = subprocess.run([str(a) for a in arguments], capture_output=True, text=True)
    if done.returncode != 0:
        raise ProgramFailed(f"{' '.join(map(str, arguments))}: exit {done.returncode}: "
                            f"{done.stderr.strip()[:2000]}")
    return done.stdout


class Terminal:
    """The terminal program: the document is imported into a new project, then asked about."""

    def __init__(self, path):
        self._path = path

    def ask(self, document_file, questions):
        """One answer to each question: a moment, "hours" or "credit"."""
        project = Path(document_file).parent / "made.lastrivet"
        _run([self._path, "import", project, document_file, "--create"])
        return [json.loads(_run([self._path, *self._verb(question, project), "--json"]))
                for question in questions]

    @staticmethod
    def _verb(question, project):
        if question in ("hours", "credit"):
            return [question, project]
        return ["ready", project, "--as-of", question]


class Batch:
    """A program that answers several readiness questions about a document at once."""

    def __init__(self, path):
        self._path = path

    def ask(self, document_file, questions):
        """Answers to the moments; hours and credit are not asked of it and come back as None."""
        moments = [q for q in questions if q not in ("hours", "credit")]
        answers = iter(json.loads(_run([self._path, document_file, *moments])) if moments else [])
        return [None if q in ("hours", "credit") else next(answers) for q in questions]
