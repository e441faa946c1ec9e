#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The readiness answer of a document, worked out slowly and literally."""

import argparse
import json
from datetime import date

from consequences import Consequences
from document import Document
from evidence_rules import on_record
from profiles import PROFILES
from verdict import Verdict
from visit_plan import visit_plan
from words import Words


def readiness(document, as_of, words=None):
    """The answer as plain lists and dictionaries, without its free text."""
    verdict = Verdict(words or Words(document), PROFILES[document.project.profile], as_of)
    follows = Consequences(verdict)
    return {
        "as_of": as_of,
        "profile": document.project.profile,
        "closings": [_closing(verdict, follows, c) for c in follows.closings],
        "out_of_reach": follows.out_of_reach(),
        "last_chance": follows.last_chance(),
        "workable": follows.workable(),
        "visit_plan": visit_plan(follows),
        "unlock": follows.unlock(),
        "to_complete": follows.to_complete(),
        "components": follows.badges(),
    }


def _closing(verdict, follows, closing):
    d = verdict.judged_at(closing)
    return {
        "id": closing.id,
        "state": follows.states[closing.id],
        "reach": sorted(verdict.words.reach(closing)),
        "on_record": on_record(verdict.view(d), closing),
        "blockers": [b.as_json() for b in verdict.blockers(closing, d)],
    }


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("document")
    parser.add_argument("--as-of", default=date.today().isoformat())
    arguments = parser.parse_args()
    document = Document.read(arguments.document)
    print(json.dumps(readiness(document, arguments.as_of), indent=1))


if __name__ == "__main__":
    main()
