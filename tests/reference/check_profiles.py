#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the rule profiles against their JSON Schema and against a table of hold points typed by hand.

Validator: python3-jsonschema, an implementation of JSON Schema 2020-12 that is not ours.
Usage: check_profiles.py RESOURCES_FOLDER
"""

import copy
import datetime
import json
import pathlib
import sys

import jsonschema

STRUCTURES = ("control_surface", "fuel_tank", "fuselage_section", "lifting_surface")

# What each country asks for, as the maintainers agreed it: (scope, kind, signer, required, only for).
HOLD_POINTS = {
    "ca": [
        ("region", "tool_and_debris_check", "builder", True, ()),
        ("region", "pre_cover", "inspector", True, ()),
        ("aircraft", "final", "inspector", True, ()),
    ],
    "us": [
        ("region", "tool_and_debris_check", "builder", True, ()),
        ("region", "own_check", "builder", True, ()),
        ("region", "technical_visit", "adviser", False, STRUCTURES),
        ("aircraft", "final", "inspector", True, ()),
    ],
    "gb": [
        ("region", "tool_and_debris_check", "builder", True, ()),
        ("region", "stage", "inspector", True, ()),
        ("aircraft", "final", "inspector", True, ()),
    ],
    "plain": [
        ("region", "tool_and_debris_check", "builder", True, ()),
        ("region", "own_check", "builder", True, ()),
        ("aircraft", "final", "builder", True, ()),
    ],
}

# (interior photos, late acceptance by, factory closing needs a document, credit basis, one open request)
SINGLE_VALUES = {
    "ca": (2, {"inspector"}, True, "ticks", True),
    "us": (2, {"inspector", "adviser", "builder"}, False, "tenths", False),
    "gb": (2, {"inspector"}, False, "tenths", False),
    "plain": (1, {"inspector", "adviser", "builder"}, False, "tenths", False),
}

# Which papers each country asks for: r required, e expected, s in some cases, b on resale.
DOCUMENTS = {
    "letter_of_intent": {"ca": "r", "gb": "e"},
    "registration": {"ca": "r", "us": "r", "gb": "r"},
    "inspection_reports": {"ca": "r", "gb": "r"},
    "programme_letter": {"us": "r"},
    "weight_and_balance_report": {"ca": "r", "us": "r"},
    "major_portion_checklist": {"ca": "s", "us": "s"},
    "bill_of_sale": {"ca": "b", "us": "r"},
    "data_plate": {"ca": "r", "us": "r"},
    "operating_limitations": {"ca": "r", "us": "r"},
    "test_plan": {"us": "r", "gb": "r"},
}
NEEDS = {"r": "required", "e": "expected", "s": "some_cases", "b": "resale"}

STRUCTURE_LISTS = {
    "common", "metal_control_surface", "wing", "fuel_tank", "fuselage_and_tail", "wood", "fabric",
    "composite", "firewall_forward", "electrical", "controls",
}


def everything_that_cites(value, path=""):
    """Each object with a source, and where it stands."""
    if isinstance(value, dict):
        if "source" in value:
            yield path, value
        for key, inner in value.items():
            yield from everything_that_cites(inner, f"{path}/{key}")
    elif isinstance(value, list):
        for index, inner in enumerate(value):
            yield from everything_that_cites(inner, f"{path}/{index}")


def citation_faults(profile):
    """Sources that do not exist or are never used, and marks that claim more than the source's."""
    strength = {"memory": 0, "second-hand": 1, "read": 2}
    sources = {source["id"]: source for source in profile["sources"]}
    if len(sources) != len(profile["sources"]):
        yield "/sources: two sources share an id"
    used = set()
    for path, rule in everything_that_cites(profile):
        source = sources.get(rule["source"])
        used.add(rule["source"])
        if source is None:
            yield f"{path}: no source {rule['source']}"
        elif rule["mark"] == "read" and strength[source["mark"]] < strength["read"]:
            yield f"{path}: marked as read, but its source {source['id']} is not"
    for unused in sorted(set(sources) - used):
        yield f"/sources: {unused} is named by no rule"


def hold_points(profile):
    return [
        (h["scope"], h["kind"], h["signer_role"], h["required"], tuple(sorted(h.get("component_kinds", []))))
        for h in profile["hold_points"]
    ]


def table_faults(name, profile):
    if profile["id"] != name:
        yield f"/id: is {profile['id']}, the file is {name}"
    if sorted(hold_points(profile)) != sorted(HOLD_POINTS[name]):
        yield f"/hold_points: {hold_points(profile)} is not the table's {HOLD_POINTS[name]}"
    single = (
        profile["interior_photos"], set(profile["late_acceptance_by"]),
        profile["factory_closing_needs_document"], profile["credit_basis"], profile["one_open_request"],
    )
    if single != SINGLE_VALUES[name]:
        yield f"single values {single} are not the table's {SINGLE_VALUES[name]}"
    if profile["late_entry_days"] != 30:
        yield "/late_entry_days: is not 30"
    explained = {entry["rule"] for entry in profile["basis"]}
    missing = {
        "late_acceptance_by", "factory_closing_needs_document", "credit_basis", "interior_photos",
        "one_open_request", "late_entry_days",
    } - explained
    if missing:
        yield f"/basis: nothing says why {sorted(missing)}"
    needs = {document["key"]: document["need"] for document in profile["documents"]}
    for key, row in DOCUMENTS.items():
        if needs.get(key) != NEEDS.get(row.get(name)) and (name in row or name in ("ca", "us")):
            yield f"/documents: {key} is {needs.get(key)}"
    lists = [checklist["key"] for checklist in profile["checklists"]]
    if set(lists) != STRUCTURE_LISTS or len(lists) != len(STRUCTURE_LISTS):
        yield f"/checklists: {lists}"
    if profile["sources"] and not any(c["id"] == "current_edition" for c in profile["cautions"]):
        yield "/cautions: nobody is told to check the current edition"


def drift_faults(profiles):
    """One inspector's list means the same in every country."""
    for key in sorted(STRUCTURE_LISTS):
        versions = {
            json.dumps([c["items"] for c in profile["checklists"] if c["key"] == key])
            for profile in profiles.values()
        }
        if len(versions) != 1:
            yield f"checklist {key} differs between profiles"


def schema_faults(validator, profile):
    for error in validator.iter_errors(profile):
        yield f"/{'/'.join(map(str, error.absolute_path))}: {error.message}"


def control_faults(validator, profile):
    """Positive control: broken copies have to be refused, or the schema checks nothing."""
    breakages = {
        "an unknown field": lambda p: p.update(colour="blue"),
        "a missing field": lambda p: p.pop("hold_points"),
        "an unknown role": lambda p: p["late_acceptance_by"].append("dealer"),
        "a fraction of a photo": lambda p: p.update(interior_photos=1.5),
        "a rule without its source": lambda p: p["hold_points"][0].pop("source"),
        "a mark of no meaning": lambda p: p["sources"][0].update(mark="certain"),
        "a day that does not exist": lambda p: p.update(edition="2026-02-30"),
    }
    for what, breakage in breakages.items():
        broken = copy.deepcopy(profile)
        breakage(broken)
        if validator.is_valid(broken):
            yield f"the schema lets {what} pass"


def main(resources):
    schema = json.loads((resources / "schema/profile.schema.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    formats = jsonschema.FormatChecker(formats=())
    formats.checks("date", raises=ValueError)(lambda text: bool(datetime.date.fromisoformat(text)))
    validator = jsonschema.Draft202012Validator(schema, format_checker=formats)
    profiles = {
        path.stem: json.loads(path.read_text(encoding="utf-8"))
        for path in sorted((resources / "profiles").glob("*.json"))
    }
    faults = []
    if set(profiles) != set(HOLD_POINTS):
        faults.append(f"profiles are {sorted(profiles)}, the table has {sorted(HOLD_POINTS)}")
    for name, profile in profiles.items():
        for find in (lambda: schema_faults(validator, profile), lambda: citation_faults(profile),
                     lambda: table_faults(name, profile), lambda: control_faults(validator, profile)):
            faults += [f"{name}.json {fault}" for fault in find()]
    faults += drift_faults(profiles)
    for fault in faults:
        print(fault, file=sys.stderr)
    print(f"{len(profiles)} profiles checked, {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1])))
