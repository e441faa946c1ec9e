#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The hours of a document: by component, kind, person, week and month."""

import argparse
import json
from datetime import date

from document import Document
from moment import day
from words import Words

KINDS = ("fabrication", "assembly", "finishing", "rework", "inspection", "planning", "other")


def hours(document):
    sessions = list(document.all("work_session"))
    builder = document.project.builder_id
    return {
        "total": _total(sessions),
        "rework": _total([s for s in sessions if s.kind == "rework"]),
        "components": _components(document, sessions),
        "unassigned": _total([s for s in sessions if s.component_id is None]),
        "kinds": _grouped("kind", sessions, lambda s: s.kind, KINDS.index),
        "people": _people(sessions, builder),
        "weeks": _grouped("week", sessions, _week),
        "months": _grouped("month", sessions, lambda s: s.began[:7]),
    }


def _shares(session, builder):
    """Minutes by person; a session without workers is the builder's."""
    if not session.workers:
        return {builder: session.minutes or 0}
    return {w["person_id"]: _known(w.get("minutes"), session.minutes) for w in session.workers}


def _known(own, of_session):
    return (of_session or 0) if own is None else own


def _total(sessions):
    return {
        "minutes": sum(s.minutes or 0 for s in sessions),
        "worker_minutes": sum(sum(_shares(s, None).values()) for s in sessions),
        "sessions": len(sessions),
    }


def _components(document, sessions):
    words = Words(document)
    rows = []
    for component in sorted(document.all("component"), key=lambda c: c.id):
        below = words.subtree(component.id)
        with_below = [s for s in sessions if s.component_id in below]
        if with_below:
            own = [s for s in sessions if s.component_id == component.id]
            rows.append({"id": component.id, "own": _total(own),
                         "with_below": _total(with_below)})
    return rows


def _grouped(name, sessions, key_of, order=lambda key: key):
    keys = sorted({key_of(s) for s in sessions}, key=order)
    return [{name: key, **_total([s for s in sessions if key_of(s) == key])} for key in keys]


def _people(sessions, builder):
    shares = [_shares(s, builder) for s in sessions]
    people = sorted({p for share in shares for p in share}, key=lambda p: (p is None, p or 0))
    return [{"id": p, "worker_minutes": sum(share.get(p, 0) for share in shares),
             "sessions": sum(p in share for share in shares)} for p in people]


def _week(session):
    year, week, _ = date.fromisoformat(day(session.began)).isocalendar()
    return f"{year:04}-W{week:02}"


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("document")
    print(json.dumps(hours(Document.read(parser.parse_args().document)), indent=1))


if __name__ == "__main__":
    main()
