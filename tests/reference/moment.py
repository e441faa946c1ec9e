# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Moments: local workshop time, a day ("2026-03-14") or a day with a time ("2026-03-14T16:10").

`after` is not an ordering: a day without a time ties with every time of that day, though those
times do not tie with each other. So nothing here sorts by it.
"""

from datetime import datetime, timedelta


def day(moment):
    return moment[:10]


def has_time(moment):
    return len(moment) > 10


def after(a, b):
    """True when a is certainly later than b."""
    if day(a) != day(b):
        return day(a) > day(b)
    return has_time(a) and has_time(b) and a > b


def before(a, b):
    return after(b, a)


def latest(rows, moment_of):
    """The row with the greatest id among those that no other is after; None of none.

    `rows` are records with an id; `moment_of` gives a row's moment.
    """
    uncontested = [
        row for row in rows if not any(after(moment_of(o), moment_of(row)) for o in rows)
    ]
    return max(uncontested, key=lambda row: row.id, default=None)


def plus_minutes(moment, minutes):
    """Wall-clock sum, for a moment that carries a time."""
    return (datetime.fromisoformat(moment) + timedelta(minutes=minutes)).strftime("%Y-%m-%dT%H:%M")


def wall_clock(moment):
    """The moment with a time: the last minute of the day where none is written."""
    return moment if has_time(moment) else moment + "T23:59"


def ended(session):
    """When a work session ended, as far as it was written down."""
    if has_time(session.began) and session.minutes is not None:
        return plus_minutes(session.began, session.minutes)
    return session.began
