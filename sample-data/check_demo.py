#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Checks a demo project made by make_demo.py: fields, rules, files, and that it shows enough.

Needs python3-networkx for the rules, which are those of tests/reference, and python3-pil.
"""

import argparse
import hashlib
import json
import sys
from collections import Counter
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from PIL import Image

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "tests" / "reference"))

from demo.field_rules import FieldRules  # noqa: E402
from document import Document  # noqa: E402
from invariants import broken  # noqa: E402
from readiness_reference import readiness  # noqa: E402

TODAY = "2026-11-25"
AT_LEAST = {
    "components": 120, "closings": 40, "steps": 350, "work_sessions": 400, "squawks": 60,
    "deviations": 8, "bulletins": 2, "fasteners": 150, "measurements": 30, "photographs": 120,
    "part_lines": 40, "material_lots": 8, "material_uses": 25, "tools": 6, "expenses": 30,
    "credit_tasks": 20, "inspections": 6, "sign_offs": 30, "checks": 150,
}
STATES = ("closed", "closed_early", "clear", "ready_to_sign", "ready_to_inspect", "hold")
# Rules that a visitor of the demo meets somewhere among the blockers.
RULES = (
    "unsigned-hold-point", "outdated-sign-off", "signature-without-sheet", "open-squawk",
    "undone-step", "thin-record", "failed-sample", "undecided-deviation",
    "rejected-deviation-built", "open-bulletin", "filed-above", "fastener-not-fitted",
    "loose-fastener", "unlocked-fastener", "unmarked-fastener", "torque-out-of-limits",
    "measurement-missing", "measurement-out-of-limits", "missing-part", "expired-material",
    "curing-material", "cure-time-unknown", "inner-closing-open", "inner-closed-early",
    "too-few-photos", "stale-photos", "uncalibrated-tool", "unticked-check",
)
DATE_TIME_ORIGINAL, OFFSET_TIME_ORIGINAL, EXIF_BLOCK, ORIENTATION = 0x9003, 0x9011, 0x8769, 0x0112


def check_counts(tree):
    counts = {name: len([r for r in rows if "withdrawn_on" not in r])
              for name, rows in tree.items() if isinstance(rows, list)}
    counts["photographs"] = sum(m["kind"] == "photo" for m in tree["media"])
    for name, least in AT_LEAST.items():
        if counts[name] < least:
            yield f"{counts[name]} {name}, {least} are wanted"


def check_files(tree, folder):
    listed = set()
    for row in tree["media"]:
        path = folder / row["file"]
        listed.add(path)
        data = path.read_bytes()
        if len(data) != row["bytes"] or hashlib.sha256(data).hexdigest() != row["sha256"]:
            yield f"media {row['id']}: {row['file']} is not the file that was hashed"
        if row["kind"] == "photo":
            yield from check_photo(row, path, ZoneInfo(tree["project"]["time_zone"]))
    present = {p for sub in ("photos", "documents") for p in (folder / sub).iterdir()}
    yield from (f"{path.name}: no record names it" for path in present - listed)


def check_photo(row, path, zone):
    """The EXIF time, turned into the workshop's zone where it has an offset, is taken_on."""
    with Image.open(path) as picture:
        exif = picture.getexif()
        size = picture.size
    block = exif.get_ifd(EXIF_BLOCK)
    taken = datetime.strptime(block[DATE_TIME_ORIGINAL], "%Y:%m:%d %H:%M:%S")
    offset = block.get(OFFSET_TIME_ORIGINAL)
    if offset:
        zoned = datetime.fromisoformat(taken.isoformat() + offset)
        taken = zoned.astimezone(zone).replace(tzinfo=None)
    if taken.strftime("%Y-%m-%dT%H:%M") != row["taken_on"]:
        yield f"media {row['id']}: taken {row['taken_on']}, EXIF says {taken}"
    upright = size if exif[ORIENTATION] in (1, 3) else size[::-1]
    if upright != (row["width"], row["height"]):
        yield f"media {row['id']}: {upright} upright, {row['width']} x {row['height']} said"


def check_sessions(tree):
    """No one works in two places at a time, nor in the future."""
    busy = {}
    sessions = [s for s in tree["work_sessions"] if "withdrawn_on" not in s]
    for session in sorted(sessions, key=lambda s: s["began"]):
        began = datetime.fromisoformat(session["began"])
        for worker in session["workers"]:
            person = worker["person_id"]
            if busy.get(person, began) > began:
                yield f"work_session {session['id']}: person {person} is still at work elsewhere"
            busy[person] = began + timedelta(minutes=worker.get("minutes", 0))
    for kind, rows in tree.items():
        for row in rows if isinstance(rows, list) else []:
            for field, value in row.items():
                if (field.endswith("_on") and value[:10] > TODAY
                        and field not in ("expected_on", "expires_on")):
                    yield f"{kind} {row['id']}: {field} {value} is still to come"


def check_readiness(tree):
    answer = readiness(Document(tree), TODAY)
    states = Counter(closing["state"] for closing in answer["closings"])
    print(", ".join(f"{states[s]} {s}" for s in STATES))
    met = {b["rule"] for closing in answer["closings"] for b in closing["blockers"]}
    yield from (f"no closing is {state}" for state in STATES if not states[state])
    yield from (f"no closing shows {rule}" for rule in RULES if rule not in met)
    for name in ("out_of_reach", "last_chance", "workable", "visit_plan", "unlock", "to_complete"):
        if not answer[name]:
            yield f"{name} is empty"
    accepted_late = [c for c in tree["closings"] if c.get("late_acceptances")]
    if not accepted_late:
        yield "nothing was accepted late"


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path, help="the folder that make_demo.py made")
    folder = parser.parse_args().folder
    tree = json.loads((folder / "demo.json").read_text(encoding="utf-8"))
    fields = HERE.parent / "tests" / "reference" / "fields.csv"
    found = list(FieldRules(fields).broken(tree))
    found += broken(tree)
    found += check_counts(tree)
    found += check_sessions(tree)
    found += check_files(tree, folder)
    found += check_readiness(tree)
    print("\n".join(found) or f"{folder}: nothing is wrong with it")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
