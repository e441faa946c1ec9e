# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Blockers about photographs, checks and thin records, and the numbers of what is on record."""

from blocker import Blocker
from moment import day, ended

_SHOWS_NO_STRUCTURE = {"exterior", "receipt", "signed_sheet"}


def counted_photos(view, closing):
    return [m for m in view.document.all("media")
            if m.kind in ("photo", "video") and view.happened(m.taken_on or m.imported_on)
            and (not m.shows or set(m.shows) - _SHOWS_NO_STRUCTURE)
            and any(_links_inside(view, link, closing) for link in m.links)]


def on_record(view, closing):
    """Numbers of what is in the reach, excused or not."""
    def dated(kind, date):
        return sum(view.happened(getattr(r, date)) for r in view.in_reach(kind, closing))

    def existing(kind):
        return len(view.in_reach(kind, closing))

    checks = [c for c in view.existing("check") if c.closing_id == closing.id]
    return {
        "steps": existing("step"), "sessions": dated("work_session", "began"),
        "photos": len(counted_photos(view, closing)), "squawks": dated("squawk", "found_on"),
        "deviations": dated("deviation", "raised_on"),
        "bulletins": dated("bulletin", "received_on"), "fasteners": existing("fastener"),
        "measurements": existing("measurement"), "part_lines": existing("part_line"),
        "material_uses": dated("material_use", "used_on"), "checks": len(checks),
        "checks_done": sum(view.happened(c.done_on) for c in checks),
    }


def too_few_photos(view, closing, wanted):
    if (closing.permanent and closing.scope == "region"
            and len(counted_photos(view, closing)) < wanted):
        yield Blocker("too-few-photos", "should", closing)


def stale_photos(view, closing):
    photos = [day(m.taken_on or m.imported_on) for m in counted_photos(view, closing)]
    work = [day(ended(w)) for w in view.in_reach("work_session", closing)
            if w.kind not in ("inspection", "planning") and view.happened(ended(w))
            and not view.words.excused(w, closing)]
    if photos and work and max(photos) < max(work):
        yield Blocker("stale-photos", "should", closing)


def unticked_check(view, closing):
    for check in view.existing("check"):
        if (check.closing_id == closing.id and not check.not_applicable
                and not view.happened(check.done_on)):
            yield Blocker("unticked-check", "should", check)


def thin_record(view, closing):
    counts = on_record(view, closing)
    if not (counts["steps"] or counts["sessions"] or counts["photos"]):
        yield Blocker("thin-record", "should", closing)


def _links_inside(view, link, closing):
    if link["subject"] == "closing" and link["id"] == closing.id:
        return True
    if link["subject"] == "component":
        return link["id"] in view.words.reach(closing)
    record = view.document.find(link["subject"], link["id"])
    return record is not None and view.words.in_reach(record, closing)
