# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""People, parts, steps and the builder's log. The log says when a step was done."""

import re

from demo import moments
from demo.tables import number, rows

WORKSHOP = "Workshop, Tern Hollow"
STEP_TABLES = ("steps-tail.txt", "steps-surfaces.txt", "steps-wings.txt", "steps-fuselage.txt")


def add_people(records):
    for key, name, roles, credential, contact, note in rows("people.txt", 6):
        records.add("person", key, name=name, roles=roles.split(), credential=credential,
                    contact=contact, note=note)


def add_components(records):
    for position, cells in enumerate(rows("components.txt", 9), 1):
        code, name, kind, construction, parent, zone, where, plan, why = cells
        shelf = where if where.startswith("shelf") else None
        records.add("component", code, parent_id=records.optional("component", parent),
                    position=position, code=code, name=name, kind=kind, construction=construction,
                    zone=zone, plan_ref=plan, place=None if shelf else where, shelf=shelf,
                    never_enclosed_why=why)


def step_keys():
    return [key for table in STEP_TABLES for key, *_ in rows(table, 7)]


class Log:
    """The sessions of log.txt, and what they say of steps and squawks."""

    def __init__(self, records):
        self._records = records
        self.sessions = []
        self.done, self.found, self.fixed = {}, {}, {}
        self._began_on = {}
        for began, worked, part, kind, who, note, marks in rows("log.txt", 7):
            minutes = None if worked == "?" else moments.minutes(worked)
            self._read(began.replace(" ", "T"), minutes, part, kind, who, note, marks)

    def began(self, step):
        """When the last session on a step began."""
        return self._began_on[step]

    def add_sessions(self):
        for number_, session in enumerate(self.sessions, 1):
            self._records.add("work_session", number_, **session)

    def _read(self, began, worked, part, kind, who, note, marks):
        end = moments.plus(began, worked or 0)
        marked = self._marks(marks)
        steps = marked.get("done", []) + marked.get("on", [])
        for step in steps:
            self._began_on[step] = began
        for name, known in (("done", self.done), ("found", self.found), ("fixed", self.fixed)):
            for key in marked.get(name, []):
                if key in known:
                    raise ValueError(f"log: {name} {key} twice")
                known[key] = end
        squawk = (marked.get("sq") or [None])[0]
        self.sessions.append({
            "began": began, "approximate": marked.get("approximate"), "minutes": worked,
            "component_id": self._records.optional("component", part),
            "step_id": self._records.id("step", steps[0]) if steps else None,
            "squawk_id": self._records.id("squawk", squawk) if squawk else None,
            "kind": kind, "place": WORKSHOP,
            "changed_inspected": marked.get("changed_inspected"),
            "workers": self._workers(who, worked), "source": marked.get("source"),
            "note": note,
            **marked.get("withdrawn", {}),
        })

    def _marks(self, text):
        found = {}
        for mark in filter(None, (m.strip() for m in text.split(";"))):
            name, *keys = mark.split()
            if mark in ("same", "changed"):
                found["changed_inspected"] = mark == "changed"
            elif name == "withdrawn":
                found["withdrawn"] = {"withdrawn_on": keys[0], "withdrawn_why": " ".join(keys[1:])}
            elif name == "about":
                found["approximate"] = True
            elif name == "from":
                found["source"] = " ".join(keys)
            elif name in ("done", "on", "found", "fixed", "sq"):
                found.setdefault(name, []).extend(keys)
            else:
                raise ValueError(f"log: unknown mark {mark}")
        return found

    def _workers(self, who, worked):
        workers = []
        for text in who.split():
            key, _, less = text.rstrip("$").partition(":")
            worker = {"person_id": self._records.id("person", key)}
            if worked:
                worker["minutes"] = moments.minutes(less) if less else worked
            if text.endswith("$"):
                worker["paid"] = True
            workers.append(worker)
        return workers


def add_steps(records, log):
    """The steps of all tables; the step of each closing is returned.

    `after` is the row before, of the same part, where nothing is said.
    """
    position, previous, closing_steps = 0, {}, {}
    for table in STEP_TABLES:
        for key, title, estimate, after, closes, may_follow, plan in rows(table, 7):
            position += 1
            part = key.rpartition(".")[0]
            before = _before(after, previous.get(part))
            previous[part] = key
            if closes:
                closing_steps[closes] = key
            records.add("step", key, component_id=records.id("component", part),
                        position=position, title=title, plan_ref=plan,
                        estimate_minutes=number(estimate), after=records.ids("step", before),
                        closes=records.optional("closing", closes),
                        may_follow=records.ids("closing", _names(may_follow)),
                        done_on=log.done.get(key))
    strangers = [key for key in log.done if not records.has("step", key)]
    if strangers:
        raise ValueError(f"log: unknown steps {strangers}")
    return closing_steps


def _before(text, previous):
    if text == "-":
        return []
    named = _names(text.lstrip("+"))
    own = [previous] if previous and (not text or text.startswith("+")) else []
    return own + named


def _names(text):
    return [name for name in re.split(r"[,\s]+", text) if name]
