#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Says which rules of the records a document breaks, so that random ones can be trusted."""

import argparse
import json
import sys

import networkx

from document import ARRAYS, Document
from moment import after
from profiles import LATE_ACCEPTANCE_BY
from random_project import random_project
from words import Words

# Fields that name records, by what they name. Fields not listed here name nothing that is judged.
REFERENCES = {
    "person": ("by", "done_by", "waived_by", "person_id", "inspector_id", "verified_by",
               "accepted_by", "decided_by", "builder_id", "present", "found_by", "fixed_by",
               "asked_of", "pilot_id"),
    "component": ("parent_id", "component_id", "component_ids", "encloses", "needs_access_to"),
    "closing": ("closes", "closing_id", "may_follow", "not_inside"),
    "step": ("step_id",), "squawk": ("squawk_id",), "inspection": ("inspection_id",),
    "hold_point": ("hold_point_id",), "sign_off": ("late_acceptances",), "tool": ("tool_id",),
    "material_lot": ("lot_ids",), "media": ("scan_id", "media_ids", "media_id", "certificate_id", "report_id"),
}
LONGEST_RECORDED = 600_000  # minutes: a whole build in one entry
ORDERS = {
    "squawk": (("found_on", "fixed_on", "verified_on"), ("found_on", "accepted_on")),
    "deviation": (("raised_on", "asked_on", "decided_on"), ("built_on", "undone_on")),
    "fastener": (("fitted_on", "torqued_on", "marked_on"), ("fitted_on", "locked_on"),
                 ("fitted_on", "removed_on")),
    "inspection": (("asked_on", "held_on", "completed_on"),),
    "part_line": (("ordered_on", "received_on"),),
}
NEEDS = {
    "fixed_on": ("correction",), "verified_on": ("fixed_on", "verified_by"),
    "accepted_on": ("accepted_by", "accepted_basis"), "complied_on": ("basis",),
    "decided_on": ("decision", "decided_by", "basis"), "waived_on": ("waived_by", "waived_why"),
    "removed_on": ("removed_why",), "withdrawn_on": ("withdrawn_why",),
}
COUNTED = {
    "step": ("estimate_minutes",), "squawk": ("estimate_minutes",),
    "part_line": ("quantity", "received_quantity", "damaged_quantity", "unit_price"),
    "material_use": ("cure_minutes",), "media": ("bytes",), "flight": ("landings",),
}
RANK = ("builder", "adviser", "inspector")


def broken(tree):
    """One line for each rule that is broken."""
    document = Document(tree)
    rows = [(kind, row) for kind, array in ARRAYS.items() for row in tree[array]]
    if tree["project"].get("time_zone") == "":
        yield "project: time_zone is empty"
    yield from _names(tree, document, rows)
    for kind, row in rows:
        yield from _dates(kind, row)
        yield from _needs(kind, row)
        yield from _counts(kind, row)
    words = Words(document)
    yield from _steps(document, words)
    yield from _closings(document, words)
    yield from _who_may(document)
    yield from _sessions_and_tasks(document)


def _names(tree, document, rows):
    for kind, array in ARRAYS.items():
        ids = [row["id"] for row in tree[array]]
        if len(ids) != len(set(ids)):
            yield f"{array}: an id twice"
    present = {(kind, row["id"]) for kind, row in rows}
    for kind, row in rows:
        live = row.get("withdrawn_on") is None
        parts = [row, *row.get("workers", []), *row.get("events", []),
                 *row.get("calibrations", [])]
        for target, fields in REFERENCES.items():
            for named in _ids(parts, fields):
                known = document.find(target, named) if live else (target, named) in present
                if not known:
                    yield f"{kind} {row['id']}: names {target} {named}"
        loose = [("step", i) for i in row.get("after", [])]
        loose += [("hold_point", i) for i in row.get("hold_point_ids", [])]
        loose += [(link["subject"], link["id"]) for link in row.get("links", [])]
        yield from (f"{kind} {row['id']}: names {name}" for name in loose if name not in present)


def _ids(parts, fields):
    for part in parts:
        for field in fields:
            value = part.get(field)
            yield from value if isinstance(value, list) else [] if value is None else [value]


def _dates(kind, row):
    for chain in ORDERS.get(kind, ()):
        moments = [row[field] for field in chain if row.get(field)]
        if any(after(a, b) for n, a in enumerate(moments) for b in moments[n:]):
            yield f"{kind} {row['id']}: {chain} out of order"
    for calibration in row.get("calibrations", []):
        if after(calibration["calibrated_on"], calibration["due_on"]):
            yield f"{kind} {row['id']}: due before calibrated"


def _needs(kind, row):
    def has(field):
        return row.get(field) is not None

    for field, needed in NEEDS.items():
        if has(field) and not all(has(n) for n in needed):
            yield f"{kind} {row['id']}: {field} lacks one of {needed}"
    if kind == "measurement" and has("value") != has("measured_on"):
        yield f"measurement {row['id']}: value without moment, or the other way round"
    limited = kind == "fastener" and (has("torque_min") or has("torque_max"))
    if limited and has("torque_value") != has("torqued_on"):
        yield f"fastener {row['id']}: torque without moment, or the other way round"


def _counts(kind, row):
    if row.get("withdrawn_on") is None:
        yield from (f"{kind} {row['id']}: {field} is below zero" for field in COUNTED.get(kind, ())
                    if (row.get(field) or 0) < 0)


def _steps(document, words):
    steps = [*document.all("step"), *document.withdrawn_steps.values()]
    order = networkx.DiGraph((earlier, s.id) for s in steps for earlier in s.after)
    if not networkx.is_directed_acyclic_graph(order):
        yield "steps: after has a cycle"
        return
    for step in document.all("step"):
        for earlier in (document.find("step", i) for i in words.steps_before(step)):
            closing = earlier and document.find("closing", earlier.closes)
            if closing and words.in_reach(step, closing) and closing.id not in step.may_follow:
                yield f"step {step.id}: comes after the closing {closing.id} it lies in"


def _closings(document, words):
    closings = document.all("closing")
    inside = networkx.DiGraph((c.id, k.id) for c in closings for k in words.inner(c))
    if not networkx.is_directed_acyclic_graph(inside):
        yield "closings: lies inside has a cycle"
    if sum(c.scope == "aircraft" for c in closings) > 1:
        yield "closings: two of scope aircraft"
    for closing in closings:
        names = [next(k for k in ("closed_on", "opened_on") if k in e) for e in closing.events]
        if names != ["closed_on", "opened_on"] * (len(names) // 2) + ["closed_on"] * (
                len(names) % 2):
            yield f"closing {closing.id}: events do not alternate"
        moments = [e[name] for e, name in zip(closing.events, names)]
        if any(after(a, b) for n, a in enumerate(moments) for b in moments[n:]):
            yield f"closing {closing.id}: events out of order"
        if (closing.scope == "aircraft") != (not closing.encloses):
            yield f"closing {closing.id}: encloses the wrong number of parts"
        if words.proper_ancestors(closing.component_id) & set(closing.encloses):
            yield f"closing {closing.id}: encloses what it lies in"
    for row in [*document.all("hold_point"), *document.all("check")]:
        if document.find("closing", row.closing_id).made_by == "factory":
            yield f"{row.kind_of_record} {row.id}: of a factory-made closing"


def _who_may(document):
    late = {i for c in document.all("closing") for i in c.late_acceptances}
    for sign_off in document.all("sign_off"):
        point = document.find("hold_point", sign_off.hold_point_id)
        if point is not None and not _may(document, sign_off.person_id, point.signer_role):
            yield f"sign_off {sign_off.id}: by someone who may not"
        if sign_off.id in late:
            yield from _late_acceptance(document, sign_off)
    for squawk in document.all("squawk"):
        if squawk.verified_by and not _may(document, squawk.verified_by,
                                           squawk.verify_by or "builder"):
            yield f"squawk {squawk.id}: verified by someone who may not"
        if squawk.severity == "airworthiness" and squawk.accepted_by and not _roles(
                document, squawk.accepted_by) & {"designer", "adviser", "inspector"}:
            yield f"squawk {squawk.id}: accepted by someone who may not"
    for point in document.all("hold_point"):
        if point.waived_by and point.required and point.signer_role == "inspector":
            if not _may(document, point.waived_by, "inspector"):
                yield f"hold_point {point.id}: waived by someone who may not"


def _late_acceptance(document, sign_off):
    allowed = set(LATE_ACCEPTANCE_BY[document.project.profile])
    roles = _roles(document, sign_off.person_id) & allowed
    if sign_off.hold_point_id is not None or not roles:
        yield f"sign_off {sign_off.id}: no late acceptance"
    if roles == {"builder"} and not sign_off.remarks:
        yield f"sign_off {sign_off.id}: a builder's acceptance without remarks"


def _roles(document, person_id):
    return set(document.find("person", person_id).roles)


def _may(document, person_id, role):
    return bool(_roles(document, person_id) & set(RANK[RANK.index(role):]))


def _sessions_and_tasks(document):
    for session in document.all("work_session"):
        people = [w["person_id"] for w in session.workers]
        if len(people) != len(set(people)):
            yield f"work_session {session.id}: someone twice"
        if any((w.get("minutes") or 0) > (session.minutes or 0) for w in session.workers):
            yield f"work_session {session.id}: a worker has more than the session"
        if (session.minutes or 0) > LONGEST_RECORDED:
            yield f"work_session {session.id}: longer than a lifetime's build"
    for task in document.all("credit_task"):
        tenths = [task.kit_tenths, task.commercial_tenths, task.assembly_tenths,
                  task.fabrication_tenths]
        if not all(0 <= t <= 10 for t in tenths) or sum(tenths) != (
                0 if task.not_applicable else 10):
            yield f"credit_task {task.id}: tenths do not add up"


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("document", nargs="*")
    parser.add_argument("--random", type=int, default=0, help="how many random projects to check")
    arguments = parser.parse_args()
    trees = [(path, json.load(open(path, encoding="utf-8"))) for path in arguments.document]
    trees += [(f"seed {seed}", random_project(seed)[0]) for seed in range(arguments.random)]
    found = [f"{name}: {line}" for name, tree in trees for line in broken(tree)]
    print("\n".join(found) or f"{len(trees)} documents, nothing broken")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
