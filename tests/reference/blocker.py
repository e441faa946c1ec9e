# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""One thing that stands in the way of a closing."""

from dataclasses import dataclass, field


@dataclass
class Blocker:
    rule: str
    weight: str
    record: object
    waits_for: str | None = None
    facts: list = field(default_factory=list)

    @property
    def key(self):
        return (self.record.kind_of_record, self.record.id)

    def as_json(self):
        kind, record_id = self.key
        return {"rule": self.rule, "weight": self.weight, "record": kind, "id": record_id,
                "waits_for": self.waits_for, "facts": self.facts}


def must_if(condition):
    return "must" if condition else "should"
