# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A small project: two wings, one of them with a rib, a box that will be closed, some work."""

BUILDER, HELPER, INSPECTOR = 90, 91, 92
LEFT_WING, RIB, RIGHT_WING = 1, 2, 3
RIVET_RIBS, CLOSE_SKIN = 10, 11
LEFT_SKIN, RIGHT_SKIN = 20, 21
OVERDRIVEN, SCRATCH, LOOSE_WIRE, BURR = 30, 31, 32, 33


def bench():
    """A document of the interchange format; each call gives a fresh one."""
    return {
        "format": "lastrivet-records", "version": 1, "hold_points_given": True,
        "project": {"name": "Bench", "profile": "plain", "builder_id": BUILDER,
                    "time_zone": "Europe/Berlin", "currency": "EUR"},
        "people": [
            {"id": BUILDER, "name": "Ada Holm", "roles": ["builder"]},
            {"id": HELPER, "name": "Ben Ruiz", "roles": ["helper"]},
            {"id": INSPECTOR, "name": "Cleo Marsh", "roles": ["inspector"]}],
        "components": [
            {"id": LEFT_WING, "code": "LW", "name": "Left wing", "kind": "lifting_surface"},
            {"id": RIB, "parent_id": LEFT_WING, "code": "LW-R1", "name": "Nose rib 1"},
            {"id": RIGHT_WING, "code": "RW", "name": "Right wing", "kind": "lifting_surface"}],
        "steps": [
            {"id": RIVET_RIBS, "component_id": RIB, "title": "Rivet the nose ribs",
             "estimate_minutes": 90},
            {"id": CLOSE_SKIN, "component_id": LEFT_WING, "title": "Rivet the lower skin",
             "after": [RIVET_RIBS], "closes": LEFT_SKIN}],
        "work_sessions": [
            {"id": 40, "began": "2025-12-29T18:30", "minutes": 100, "component_id": LEFT_WING,
             "kind": "fabrication",
             "workers": [{"person_id": BUILDER}, {"person_id": HELPER, "minutes": 40}]},
            {"id": 41, "began": "2026-01-03", "minutes": 30, "component_id": RIB,
             "kind": "rework"},
            {"id": 42, "began": "2026-02-01", "minutes": 20, "kind": "planning"},
            {"id": 43, "began": "2026-02-02", "component_id": RIGHT_WING},
            {"id": 44, "began": "2026-02-03", "minutes": 600, "component_id": RIGHT_WING,
             "withdrawn_on": "2026-02-04", "withdrawn_why": "entered twice"}],
        "closings": [
            {"id": LEFT_SKIN, "component_id": LEFT_WING, "title": "Left wing, lower skin",
             "encloses": [LEFT_WING]},
            {"id": RIGHT_SKIN, "component_id": RIGHT_WING, "title": "Right wing, lower skin",
             "encloses": [RIGHT_WING], "permanent": False}],
        "squawks": [
            {"id": OVERDRIVEN, "number": "1", "component_id": RIB, "title": "Overdriven rivet",
             "severity": "workmanship", "found_on": "2026-01-02"},
            {"id": SCRATCH, "number": "2", "component_id": RIGHT_WING, "title": "Scratch",
             "severity": "cosmetic", "found_on": "2026-01-01", "correction": "polished",
             "fixed_on": "2026-01-05", "verified_on": "2026-01-06", "verified_by": BUILDER},
            {"id": LOOSE_WIRE, "number": "3", "title": "Wiring list has two pages 7",
             "severity": "airworthiness", "found_on": "2026-01-03"},
            {"id": BURR, "number": "4", "component_id": RIGHT_WING, "title": "Burr in the spar web",
             "severity": "workmanship", "found_on": "2026-02-05"}],
        "credit_tasks": [
            {"id": 50, "section": "Wings", "task": "Rivet the ribs", "kit_tenths": 3,
             "assembly_tenths": 2, "fabrication_tenths": 5, "component_ids": [LEFT_WING]},
            {"id": 51, "section": "Wings", "task": "Paint", "not_applicable": True}],
    }


def of_this(document, **changes):
    """The document with some parts replaced."""
    return {**document, **changes}
