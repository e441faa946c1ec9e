# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Collects the records of the document and gives each its id."""

ARRAYS = {
    "person": "people", "component": "components", "step": "steps",
    "work_session": "work_sessions", "closing": "closings", "hold_point": "hold_points",
    "check": "checks", "inspection": "inspections", "sign_off": "sign_offs",
    "squawk": "squawks", "deviation": "deviations", "bulletin": "bulletins",
    "fastener": "fasteners", "measurement": "measurements", "tool": "tools",
    "part_line": "part_lines", "material_lot": "material_lots", "material_use": "material_uses",
    "media": "media", "expense": "expenses", "credit_task": "credit_tasks",
    "equipment": "equipment", "weighing": "weighings", "loading_case": "loading_cases",
    "envelope": "envelopes", "certificate_document": "certificate_documents", "flight": "flights",
}


class Records:
    """The rows by record type. Keys are the short names of the tables: LW-R3, LTK-C, WO."""

    def __init__(self):
        self._ids = {kind: {} for kind in ARRAYS}
        self._rows = {kind: {} for kind in ARRAYS}

    def id(self, kind, key):
        """The id of what the tables call `key`; given out at the first mention."""
        known = self._ids[kind]
        return known.setdefault(key, len(known) + 1)

    def reserve(self, kind, keys):
        """Gives out ids in the order of a table, before other tables name its rows."""
        for key in keys:
            self.id(kind, key)

    def ids(self, kind, keys):
        return sorted(self.id(kind, key) for key in keys)

    def optional(self, kind, key):
        return self.id(kind, key) if key and key != "-" else None

    def add(self, kind, key, /, **fields):
        """Adds a record; nulls and empty lists are left out."""
        number = self.id(kind, key)
        if number in self._rows[kind]:
            raise ValueError(f"{kind} {key}: twice")
        kept = {k: v for k, v in fields.items() if v is not None and v != [] and v != ""}
        self._rows[kind][number] = {"id": number, **kept}
        return self._rows[kind][number]

    def row(self, kind, key):
        return self._rows[kind][self._ids[kind][key]]

    def all(self, kind):
        return list(self._rows[kind].values())

    def has(self, kind, key):
        return key in self._ids[kind]

    def arrays(self):
        """All arrays of the document, records by id."""
        for kind, known in self._ids.items():
            missing = [key for key, number in known.items() if number not in self._rows[kind]]
            if missing:
                raise ValueError(f"{kind}: named but not defined: {missing}")
        return {
            array: [self._rows[kind][number] for number in sorted(self._rows[kind])]
            for kind, array in ARRAYS.items()
        }
