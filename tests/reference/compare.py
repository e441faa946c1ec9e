#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Compares a program with the reference, on random projects or on the worked examples.

Exit 0 when all answers are equal, 1 at the first difference.
"""

import argparse
import json
import sys
import tempfile
import time
from pathlib import Path

from check_cases import answer
from document import Document
from expectation import differences
from program import Batch, ProgramFailed, Terminal
from random_project import random_project
from shrink import shrink
from verdict import RULES, RULES_OF_THEIR_OWN

# So many random projects meet every rule, if the makers of random records know of it, and give
# every state of a closing and every list something.
ENOUGH_FOR_EVERY_RULE = 60
STATES = ("closed", "closed_early", "clear", "ready_to_sign", "ready_to_inspect", "hold")
LISTS = ("out_of_reach", "last_chance", "workable", "visit_plan", "unlock", "to_complete",
         "components")
TO_COMPLETE = ("factory-closing-without-document", "closing-step-not-done", "record-without-place",
               "part-without-closing")


def ask(program, document, questions):
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "document.json"
        path.write_text(json.dumps(document, indent=1), encoding="utf-8")
        return program.ask(path, questions)


def compare(program, document, questions, fired=None):
    """Lines that say where program and reference differ, by question; adds what the program's
    answers met to `fired`."""
    records = Document(document)
    lines = []
    for question, given in zip(questions, ask(program, document, questions)):
        if given is not None:
            if fired is not None and "closings" in given:
                fired.update(met(given))
            found = differences(answer(records, as_asked(question)), given)
            lines += [f"{question}: {line}" for line in found]
    return lines


def met(given):
    """The rules, states and lists that a readiness answer has something of, by name."""
    for closing in given["closings"]:
        yield closing["state"]
        yield from (blocker["rule"] for blocker in closing["blockers"])
    yield from (name for name in LISTS if given[name])
    yield from (row["what"] for row in given["to_complete"])
    if any(row["cumulative_minutes"] and row["other_blockers"] for row in given["visit_plan"]):
        yield "visit that takes work"


def as_asked(question):
    return {"verb": question} if question in ("hours", "credit") else {"as_of": question}


def compare_random(program, arguments):
    started = time.monotonic()
    fired = set()
    for seed in range(arguments.seed, arguments.seed + arguments.count):
        document, moments = random_project(seed, arguments.size)
        questions = [*moments, "hours", "credit"]
        try:
            lines = compare(program, document, questions, fired)
        except ProgramFailed as failure:
            lines = [str(failure)]
        if lines:
            report(program, arguments, seed, document, questions, lines)
            return 1
    quiet = {*(rule.__name__.replace("_", "-") for rule in RULES), *RULES_OF_THEIR_OWN, *STATES,
             *LISTS, *TO_COMPLETE, "visit that takes work"} - fired
    if quiet and arguments.count >= ENOUGH_FOR_EVERY_RULE:
        print(f"no project meets {', '.join(sorted(quiet))}: nothing was compared")
        return 1
    print(f"{arguments.count} projects, all answers equal, {time.monotonic() - started:.0f} s")
    return 0


def report(program, arguments, seed, document, questions, lines):
    if arguments.shrink:
        document = shrink(document, lambda smaller: _differs(program, smaller, questions))
        lines = compare(program, document, questions)
    arguments.keep.mkdir(parents=True, exist_ok=True)
    path = arguments.keep / f"seed-{seed}.json"
    path.write_text(json.dumps(document, indent=1), encoding="utf-8")
    print(f"seed {seed} differs, kept as {path}")
    print("\n".join(lines[:arguments.lines]))


def _differs(program, document, questions):
    try:
        return bool(compare(program, document, questions))
    except (ProgramFailed, KeyError, AttributeError, TypeError):
        return False  # no longer a valid document


def compare_cases(program, folder):
    failed = asked = 0
    for path in sorted(folder.glob("*.json")):
        case = json.loads(path.read_text(encoding="utf-8"))
        questions = [q.get("verb") or q["as_of"] for q in case["asked"]]
        for question, given in zip(case["asked"], ask(program, case["document"], questions)):
            if given is None:
                continue
            found = differences(question["expect"], given)
            asked += 1
            failed += bool(found)
            for line in found:
                print(f"{case['name']} {question.get('as_of', question.get('verb'))}: {line}")
    print(f"{asked} questions, {failed} answered differently")
    return 1 if failed or not asked else 0


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    program = parser.add_mutually_exclusive_group(required=True)
    program.add_argument("--cli", type=Path, help="the terminal program")
    program.add_argument("--batch", type=Path,
                         help="a program that takes DOC.json MOMENT... and prints all answers")
    parser.add_argument("--cases", type=Path, help="a folder of worked examples to ask instead")
    parser.add_argument("--count", type=int, default=100, help="random projects to make")
    parser.add_argument("--seed", type=int, default=1, help="seed of the first of them")
    parser.add_argument("--size", type=int, help="number of components")
    parser.add_argument("--shrink", action="store_true", help="cut a differing document down")
    parser.add_argument("--keep", type=Path, default=Path("differing"),
                        help="folder for differing documents")
    parser.add_argument("--lines", type=int, default=12, help="how much of a difference to print")
    arguments = parser.parse_args()
    asked = Terminal(arguments.cli) if arguments.cli else Batch(arguments.batch)
    if arguments.cases:
        return compare_cases(asked, arguments.cases)
    return compare_random(asked, arguments)


if __name__ == "__main__":
    sys.exit(main())
