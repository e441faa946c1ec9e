#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Checks an interchange document against the schema, and that faults in it are found.

Each fault is made in a copy of the document, which is valid before.
"""

import argparse
import copy
import json
import sys

from jsonschema import Draft202012Validator


def first(tree, array, with_field):
    return next(row for row in tree[array] if row.get(with_field))


def faults(tree):
    """Name and a document with that one fault."""
    def changed(change):
        faulty = copy.deepcopy(tree)
        change(faulty)
        return faulty

    yield "another format", changed(lambda t: t.update(format="other"))
    yield "another version", changed(lambda t: t.update(version=2))
    yield "no project", changed(lambda t: t.pop("project"))
    yield "an unknown array", changed(lambda t: t.update(rivets=[]))
    yield "an unknown field", changed(lambda t: t["people"][0].update(age=50))
    yield "a missing field", changed(lambda t: t["components"][0].pop("name"))
    yield "an empty name", changed(lambda t: t["components"][0].update(name=""))
    yield "an empty time zone", changed(lambda t: t["project"].update(time_zone=""))
    yield "an id of 0", changed(lambda t: t["steps"][0].update(id=0))
    yield "an id too large", changed(lambda t: t["steps"][0].update(id=2**53))
    yield "an id as text", changed(lambda t: t["steps"][0].update(component_id="1"))
    yield "no whole number", changed(lambda t: t["steps"][0].update(position=1.5))
    yield "a word of no vocabulary", changed(lambda t: t["squawks"][0].update(severity="grave"))
    yield "a month too many", changed(lambda t: t["squawks"][0].update(found_on="2026-13-01"))
    yield "a year too early", changed(lambda t: t["squawks"][0].update(found_on="1899-12-31"))
    yield "U+0000", changed(lambda t: t["squawks"][0].update(title="a\0b"))
    yield "a null where one is not allowed", changed(lambda t: t["tools"][0].update(name=None))
    yield "nobody's role", changed(lambda t: t["people"][0].update(roles=[]))
    yield "a fault in a list", changed(
        lambda t: first(t, "work_sessions", "workers")["workers"][0].update(person_id=None))


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("schema")
    parser.add_argument("document")
    arguments = parser.parse_args()
    with open(arguments.schema, encoding="utf-8") as file:
        schema = json.load(file)
    with open(arguments.document, encoding="utf-8") as file:
        text = file.read()
    tree = json.loads(text)
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    found = [f"{'/'.join(map(str, e.path))}: {e.message[:200]}" for e in validator.iter_errors(tree)]
    found += [f"not found: {name}" for name, faulty in faults(tree) if validator.is_valid(faulty)]
    if text != json.dumps(tree, indent=1, ensure_ascii=False) + "\n":
        found.append("the document is not laid out with an indent of one space")
    print("\n".join(found) or "valid, and every fault was found")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
