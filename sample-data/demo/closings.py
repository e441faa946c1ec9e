# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Closings with their hold points, lists, visits and signatures."""

from demo import moments
from demo.tables import rows, stanzas

DEBRIS_SOURCE = ("Practice of the trade, from builders' and inspectors' accounts; no published "
                 "standard")
VISIT_SOURCE = "Minister's delegate for recreational aviation: public page on standard inspections"


class Closings:
    """Adds what closings.txt, checks.txt and inspections.txt say."""

    def __init__(self, records, log, closing_steps, papers):
        self._records = records
        self._log = log
        self._closing_steps = closing_steps
        self._papers = papers
        self._visits = dict(stanzas("inspections.txt"))
        self._points_of_visit = {key: [] for key in self._visits}
        self._lists = {}
        for name, item, source in rows("checks.txt", 3):
            self._lists.setdefault(name, []).append((item, source))

    def add(self):
        for key, fields in stanzas("closings.txt"):
            self._add_closing(key, fields)
        for key, fields in self._visits.items():
            self._add_visit(key, fields)

    def _add_closing(self, key, fields):
        scope = fields.one("scope") or "region"
        permanent = fields.yes("permanent")
        late = [self._sign(None, key, line) for line in fields.all("late")]
        self._records.add(
            "closing", key, component_id=self._records.id("component", fields.one("part")),
            title=fields.one("title"), scope=scope,
            encloses=self._records.ids("component", fields.words("encloses")),
            permanent=False if permanent is False else None, made_by=fields.one("made_by"),
            method=fields.one("method"), events=self._events(key, fields),
            late_acceptances=sorted(late), note=fields.one("note"))
        if fields.one("made_by") != "factory" and permanent is not False:
            self._add_hold_points(key, fields, scope)
        self._add_checks(key, fields)

    def _events(self, key, fields):
        events = []
        for name, line in fields.pairs():
            if name in ("closed", "opened"):
                who, _, rest = line.partition(" ")
                moment, _, reason = (part.strip() for part in rest.partition("|"))
                events.append(self._event(name, who, moment or self._closed_on(key), reason))
        if events and fields.one("reason"):
            events[-1]["reason"] = fields.one("reason")
        return events

    def _event(self, name, who, moment, reason):
        event = {f"{name}_on": moment}
        if who != "-":
            event["by"] = self._records.id("person", who)
        if reason:
            event["reason"] = reason
        return event

    def _closed_on(self, key):
        return self._log.done[self._closing_steps[key]]

    def _add_hold_points(self, key, fields, scope):
        if scope == "aircraft":
            self._hold_point(key, "final", "inspector", VISIT_SOURCE)
            return
        debris = self._hold_point(key, "tool_and_debris_check", "builder", DEBRIS_SOURCE)
        for line in fields.all("debris"):
            who, moment = line.split()
            if moment == "start":
                moment = self._log.began(self._closing_steps[key])
            self._records.add("sign_off", (debris, moment), hold_point_id=debris,
                              person_id=self._records.id("person", who), signed_on=moment,
                              result="accepted", seen="on_site")
        visited = self._hold_point(key, "pre_cover", "inspector", VISIT_SOURCE)
        for line in fields.all("pre_cover"):
            self._sign(visited, key, line)

    def _hold_point(self, closing, kind, role, source):
        row = self._records.add("hold_point", (closing, kind),
                                closing_id=self._records.id("closing", closing), kind=kind,
                                signer_role=role, required=True, source=source)
        return row["id"]

    def _sign(self, point, closing, line):
        """Adds a signature such as `HA V1 accepted by_photo 2025-05-30 | remarks`; its id."""
        words, _, remarks = line.partition("|")
        bare = "no sheet" in words
        who, visit, result, *rest = words.replace("no sheet", "").split()
        seen = rest[0] if rest else "on_site"
        moment = rest[1] if len(rest) > 1 else self._end_of_visit(visit)
        if point and visit != "-":
            self._points_of_visit[visit].append(point)
        scan = None if bare else self._papers.sheet_of(visit, closing)
        row = self._records.add(
            "sign_off", (closing, moment), hold_point_id=point,
            inspection_id=self._records.optional("inspection", visit),
            person_id=self._records.id("person", who),
            credential=self._records.row("person", who).get("credential"), signed_on=moment,
            result=result, seen=seen, remarks=remarks.strip(), scan_id=scan)
        return row["id"]

    def _end_of_visit(self, visit):
        held = self._visits[visit].one("held")
        for session in self._log.sessions:
            if session["kind"] == "inspection" and session["began"] == held:
                return moments.plus(held, session["minutes"])
        raise ValueError(f"inspection {visit}: the log has no session that began {held}")

    def _add_checks(self, key, fields):
        items = self._lists.get(fields.one("list") or "", [])
        count, _, day = (fields.one("ticked") or "0").partition(" ")
        ticked = len(items) if count == "all" else int(count)
        for n, (item, source) in enumerate(items):
            item, _, after = item.partition(" >")
            done = (day or self._ticked_on(key, fields)) if n < ticked else None
            if after:
                done = self._log.done.get(after.replace("?", key[0]))
            self._records.add(
                "check", (key, n), closing_id=self._records.id("closing", key), item=item,
                source=source, may_follow=[self._records.id("closing", key)] if after else None,
                done_on=done, done_by=self._records.id("person", "WO") if done else None)

    def _ticked_on(self, key, fields):
        """The lines are ticked when tools and debris are signed for."""
        moment = fields.all("debris")[0].split()[1]
        return self._log.began(self._closing_steps[key]) if moment == "start" else moment

    def _add_visit(self, key, fields):
        points = list(self._points_of_visit[key])
        for closing in fields.words("also"):
            point = self._records.id("hold_point", (closing, "pre_cover"))
            points += [] if point in points else [point]
        self._records.add(
            "inspection", key, kind=fields.one("kind"), reference=fields.one("reference"),
            asked_on=fields.one("asked"), planned_for=fields.one("planned"),
            held_on=fields.one("held"), completed_on=fields.one("completed"),
            cancelled_on=fields.one("cancelled"),
            inspector_id=self._records.id("person", fields.one("inspector")),
            present=self._records.ids("person", fields.words("present")),
            place=fields.one("place"), report_number=fields.one("report"),
            hold_point_ids=sorted(points), media_ids=self._papers.sheets_of_visit(key),
            note=fields.one("note"))
