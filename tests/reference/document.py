# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The records of one interchange document, with defaults filled in and withdrawn ones set apart."""

import json

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

DEFAULTS = {
    "component": {"kind": "part"},
    "step": {"after": [], "may_follow": []},
    "work_session": {"kind": "other", "workers": []},
    "closing": {"scope": "region", "permanent": True, "made_by": "builder", "encloses": [],
                "events": [], "late_acceptances": []},
    "hold_point": {"required": True},
    "check": {"may_follow": [], "not_applicable": False},
    "squawk": {"severity": "workmanship", "needs_access_to": [], "not_inside": []},
    "deviation": {"component_ids": [], "not_inside": []},
    "bulletin": {"component_ids": [], "not_inside": [], "mandatory": False},
    "fastener": {"may_follow": [], "locking": "none"},
    "measurement": {"may_follow": []},
    "tool": {"needs_calibration": False, "calibrations": []},
    "part_line": {"may_follow": [], "received_quantity": 0, "damaged_quantity": 0},
    "material_lot": {"cures": False},
    "material_use": {"may_follow": [], "sample": "none", "lot_ids": []},
    "media": {"shows": [], "links": []},
    "credit_task": {"not_applicable": False, "kit_tenths": 0, "commercial_tenths": 0,
                    "assembly_tenths": 0, "fabrication_tenths": 0, "component_ids": [],
                    "media_ids": []},
}


class Record:
    """One record; a field that is not written down reads as its default, null or empty."""

    def __init__(self, kind, row):
        self.kind_of_record = kind
        fields = dict(DEFAULTS.get(kind, {}))
        fields.update({key: value for key, value in row.items() if value is not None})
        self.__dict__.update(fields)

    def __getattr__(self, name):
        # Reached only for what is not in the document.
        if name.startswith("__"):
            raise AttributeError(name)
        return None


class Document:
    """Live records by type and id. `withdrawn_steps` are kept: they are passed through."""

    def __init__(self, tree):
        self.project = Record("project", tree["project"])
        self._live = {}
        self.withdrawn_steps = {}
        for kind, array in ARRAYS.items():
            records = [Record(kind, row) for row in tree.get(array) or []]
            self._live[kind] = {r.id: r for r in records if r.withdrawn_on is None}
            if kind == "step":
                self.withdrawn_steps = {r.id: r for r in records if r.withdrawn_on is not None}
        self._fill_places_of_sessions()

    @classmethod
    def read(cls, path):
        with open(path, encoding="utf-8") as file:
            return cls(json.load(file))

    def all(self, kind):
        return self._live[kind].values()

    def find(self, kind, record_id):
        """The live record, or None (also for a null id)."""
        return self._live[kind].get(record_id)

    def step_of(self, record):
        """The step that a record belongs to; a step is its own."""
        if record.kind_of_record == "step":
            return record
        return self.find("step", record.step_id)

    def _fill_places_of_sessions(self):
        for session in self.all("work_session"):
            if session.component_id is not None:
                continue
            source = self.find("step", session.step_id) or self.find("squawk", session.squawk_id)
            if source is not None:
                session.component_id = source.component_id
