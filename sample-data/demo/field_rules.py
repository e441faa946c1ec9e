# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds a document against the list of fields: names, types, vocabularies, what is required."""

import csv
import re
from datetime import datetime

from demo.records import ARRAYS

MOMENT = re.compile(r"\d{4}-\d{2}-\d{2}(T\d{2}:\d{2})?")
# Fields in which a record may go on naming a withdrawn one.
MAY_NAME_WITHDRAWN = {("media.links", "id"), ("inspection", "hold_point_ids"), ("step", "after")}
HEAD = {"format", "version", "hold_points_given", "project"}


class FieldRules:
    """The rows of the list, by record and field."""

    def __init__(self, path):
        self._fields = {}
        with open(path, encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                self._fields.setdefault(row["record"], {})[row["field"]] = row

    def broken(self, tree):
        """One line for each rule that is broken."""
        self._known = {kind: {r["id"] for r in tree[a]} for kind, a in ARRAYS.items()}
        self._live = {kind: {r["id"] for r in tree[a] if "withdrawn_on" not in r}
                      for kind, a in ARRAYS.items()}
        yield from (f"unknown array {name}" for name in tree.keys() - HEAD - set(ARRAYS.values()))
        yield from self._record("project", tree["project"], "project", True)
        for kind, array in ARRAYS.items():
            for row in tree[array]:
                live = "withdrawn_on" not in row
                yield from self._record(kind, row, f"{kind} {row.get('id')}", live)
        yield from self._unique(tree)

    def _record(self, record, row, name, live):
        fields = self._fields[record]
        for unknown in row.keys() - fields.keys():
            yield f"{name}: unknown field {unknown}"
        for field, rule in fields.items():
            value = row.get(field)
            if value is None or value == []:
                if rule["required"] == "yes":
                    yield f"{name}: no {field}"
            else:
                for what in self._value(record, rule, value, row, live):
                    yield f"{name}: {field} {value!r} {what}"

    def _value(self, record, rule, value, row, live):
        kind, target = rule["type"], rule["target"]
        if kind in ("id", "int"):
            if type(value) is not int or abs(value) >= 2**53 or (kind == "id" and value < 1):
                yield "is no whole number in range"
        elif kind == "real":
            if type(value) not in (int, float):
                yield "is no number"
        elif kind == "bool":
            if type(value) is not bool:
                yield "is neither true nor false"
        elif kind == "text":
            if not isinstance(value, str) or "\0" in value:
                yield "is no text"
        elif kind == "moment":
            yield from _moment(value)
        elif kind == "numbers":
            if not all(type(v) in (int, float) for v in value):
                yield "are not all numbers"
        elif kind == "list":
            for n, part in enumerate(value):
                yield from self._record(target, part, f"row {n}", live)
        else:
            yield from self._named(record, rule, value, row, live)

    def _named(self, record, rule, value, row, live):
        """Words of a vocabulary, and ids of records."""
        kind, target = rule["type"], rule["target"]
        values = value if kind in ("set", "refs") else [value]
        if len(set(values)) != len(values):
            yield "names something twice"
        if kind in ("enum", "set"):
            yield from (f"has no word {v}" for v in values if v not in target.split("|"))
        elif kind == "record":
            if value not in ARRAYS:
                yield "is no record type"
        else:
            target = row["subject"] if target == "subject" else target
            lenient = not live or (record, rule["field"]) in MAY_NAME_WITHDRAWN
            known = (self._known if lenient else self._live)[target]
            yield from (f"names no {target} {v}" for v in values if v not in known)

    def _unique(self, tree):
        for array, field in (("components", "code"), ("squawks", "number"),
                             ("deviations", "number"), ("bulletins", "number")):
            values = [row[field] for row in tree[array] if row.get(field)]
            yield from (f"{array}: {field} {v} twice" for v in set(values) if values.count(v) > 1)


def _moment(value):
    if not isinstance(value, str) or not MOMENT.fullmatch(value):
        yield "is no moment"
        return
    try:
        year = datetime.fromisoformat(value).year
    except ValueError:
        yield "is no real date"
        return
    if not 1900 <= year <= 2199:
        yield "is out of range"
