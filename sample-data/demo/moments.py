# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Moments are texts, `YYYY-MM-DD` or `YYYY-MM-DDTHH:MM`, in the workshop's time."""

from datetime import datetime, timedelta


def plus(moment, minutes):
    return (datetime.fromisoformat(moment) + timedelta(minutes=minutes)).strftime("%Y-%m-%dT%H:%M")


def minutes(text):
    """The minutes of a text such as 2h15."""
    hours, _, rest = text.partition("h")
    return int(hours) * 60 + int(rest)


def day(moment):
    return moment[:10]
