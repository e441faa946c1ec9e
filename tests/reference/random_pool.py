# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The rows of a project in the making, and who may name whom."""

from profiles import LATE_ACCEPTANCE_BY

RANK = ("builder", "adviser", "inspector")


class Pool:
    """Rows by type. A live row is only ever given live rows to name."""

    def __init__(self, chance, profile):
        self.chance = chance
        self.profile = profile
        self._rows = {}

    def rows(self, kind):
        return list(self._rows.get(kind, []))

    def live(self, kind):
        return [r for r in self.rows(kind) if r.get("withdrawn_on") is None]

    def add(self, record_type, /, **fields):
        row = {"id": self.chance.new_id(record_type), **fields}
        self._rows.setdefault(record_type, []).append(row)
        return row

    def withdrawal(self, probability=None):
        """The two fields of a row that may be withdrawn; empty for a live one."""
        if not self.chance.often(self.chance.withdrawn if probability is None else probability):
            return {}
        return {"withdrawn_on": self.chance.moment(), "withdrawn_why": "Entered by mistake"}

    def one(self, kind, namer, probability=1.0, fits=lambda row: True):
        """The id of a row that the namer (its withdrawal fields) may name, or None."""
        if not self.chance.often(probability):
            return None
        row = self.chance.one([r for r in self._nameable(kind, namer) if fits(r)])
        return row and row["id"]

    def some(self, kind, namer, most, fits=lambda row: True):
        rows = [r for r in self._nameable(kind, namer) if fits(r)]
        return [row["id"] for row in self.chance.some(rows, most)]

    def person(self, *roles):
        """The id of a live person who has one of the roles."""
        return self.chance.one([p["id"] for p in self.live("person")
                                if set(p["roles"]) & set(roles)])

    def signer(self, role):
        return self.person(*RANK[RANK.index(role):])

    def late_acceptor(self):
        return self.person(*LATE_ACCEPTANCE_BY[self.profile])

    def subtree(self, component_id):
        """Ids of live components at and below one."""
        below = {component_id}
        for row in self.live("component"):  # parents come first
            if row.get("parent_id") in below:
                below.add(row["id"])
        return below

    def reach(self, closing):
        if closing.get("scope") == "aircraft":
            return {c["id"] for c in self.live("component")}
        return set().union(*(self.subtree(c) for c in closing["encloses"]))

    def _nameable(self, kind, namer):
        return self.rows(kind) if namer else self.live(kind)
