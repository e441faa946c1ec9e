# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Chance, dates and ids for made-up projects."""

import random

FIRST_DAY = 2  # of March 2026
TIMES = ("00:00", "08:00", "10:00", "12:00", "12:01", "16:30", "23:30", "23:59")


class Chance:
    """Random picks of one project; the same seed makes the same picks."""

    def __init__(self, seed):
        self.random = random.Random(seed)
        # Few days, so that ties are the rule; how many facts have happened differs by project.
        self.days = self.random.choice((1, 2, 3, 5, 9))
        self.with_time = self.random.choice((0.0, 0.3, 0.5, 0.8, 1.0))
        self.finished = self.random.choice((0.2, 0.5, 0.8, 0.95, 1.0))
        self.quiet = self.random.choice((True, False, False))
        self.withdrawn = self.random.choice((0.0, 0.05, 0.15))
        self._used_ids = {}

    def often(self, probability):
        return self.random.random() < probability

    def is_finished(self):
        return self.often(self.finished)

    def one(self, rows):
        return self.random.choice(rows) if rows else None

    def some(self, rows, most):
        count = min(len(rows), self.random.randint(0, most))
        return self.random.sample(rows, count)

    def whole(self, low, high):
        return self.random.randint(low, high)

    def maybe(self, probability, value):
        return value if self.often(probability) else None

    def new_id(self, kind):
        """Unique within its type, but not over types, and in no order."""
        used = self._used_ids.setdefault(kind, set())
        while True:
            span = 3 * len(used) + 9
            new = self.whole(1, span)
            if self.often(0.01):
                new = 2**53 - self.whole(1, span)
            if new not in used:
                used.add(new)
                return new

    def moment(self):
        return self.moments(1)[0]

    def maybe_moment(self, probability):
        return self.moment() if self.often(probability) else None

    def moments(self, count):
        """In an order in which none is after a later one."""
        drawn = sorted((self.whole(0, self.days - 1), self.one(TIMES)) for _ in range(count))
        return [self._written(*row) for row in drawn]

    def chain(self, count):
        """Moments in order, of which only the first few have happened."""
        happened = self._how_many(count)
        return self.moments(happened) + [None] * (count - happened)

    def _how_many(self, count):
        happened = 0
        while happened < count and self.is_finished():
            happened += 1
        return happened

    def _written(self, day, time):
        text = f"2026-03-{FIRST_DAY + day:02}"
        return f"{text}T{time}" if self.often(self.with_time) else text
