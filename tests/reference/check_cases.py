#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the reference against the worked examples of a folder."""

import argparse
import json
import sys
from pathlib import Path

from credit_reference import credit
from document import Document
from expectation import differences
from hours_reference import hours
from readiness_reference import readiness


def answer(document, question):
    verb = question.get("verb")
    if verb == "hours":
        return hours(document)
    if verb == "credit":
        return credit(document)
    return readiness(document, question["as_of"])


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", nargs="?", default=Path(__file__).parent / "cases", type=Path)
    failed = asked = 0
    for path in sorted(parser.parse_args().folder.glob("*.json")):
        case = json.loads(path.read_text(encoding="utf-8"))
        for question in case["asked"]:
            found = differences(question["expect"], answer(Document(case["document"]), question))
            asked += 1
            failed += bool(found)
            for line in found:
                print(f"{case['name']} {question.get('as_of', question.get('verb'))}: {line}")
    print(f"{asked} questions, {failed} answered differently")
    return 1 if failed or not asked else 0


if __name__ == "__main__":
    sys.exit(main())
