# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Squawks, deviations and bulletins."""

from demo.tables import stanzas


class Findings:
    """Adds what squawks.txt, deviations.txt and bulletins.txt say."""

    def __init__(self, records, log):
        self._records = records
        self._log = log

    def add(self):
        for number, fields in stanzas("squawks.txt"):
            self._add_squawk(number, fields)
        for number, fields in stanzas("deviations.txt"):
            self._add_deviation(number, fields)
        for number, fields in stanzas("bulletins.txt"):
            self._add_bulletin(number, fields)

    def _person(self, key):
        return self._records.id("person", key)

    def _components(self, fields):
        return self._records.ids("component", fields.words("parts"))

    def _not_inside(self, fields):
        keys = (fields.one("not_inside") or "").replace(",", " ").split()
        return self._records.ids("closing", keys)

    def _add_squawk(self, number, fields):
        found = fields.one("found") or self._log.found[number]
        end = self._end(number, fields)
        withdrawn, _, why = (fields.one("withdrawn") or "").partition(" | ")
        self._records.add(
            "squawk", number, number=number,
            component_id=self._records.optional("component", fields.one("part")),
            title=fields.one("title"), detail=fields.one("detail"),
            severity=fields.one("severity"), found_on=found,
            found_by=self._person(fields.one("by") or "WO"),
            inspection_id=self._records.optional("inspection", fields.one("inspection")),
            finding_number=fields.one("finding"), verify_by=fields.one("verify_by"),
            needs_access_to=self._records.ids("component", fields.words("access")),
            not_inside=self._not_inside(fields), estimate_minutes=fields.number("estimate"),
            repair_plan=fields.one("plan"),
            repair_options=[self._option(line) for line in fields.all("options")],
            correction=fields.one("correction"), **end, withdrawn_on=withdrawn,
            withdrawn_why=why)

    def _end(self, number, fields):
        """How far the squawk has come: fixed, verified, accepted."""
        end = {}
        if fields.one("fixed"):
            who, end["fixed_on"] = fields.one("fixed").split()
            end["fixed_by"] = self._person(who)
        elif number in self._log.fixed:
            end["fixed_on"], end["fixed_by"] = self._log.fixed[number], self._person("WO")
        if fields.one("verified"):
            who, _, moment = fields.one("verified").partition(" ")
            end["verified_on"] = moment or end["fixed_on"]
            end["verified_by"] = self._person(who)
        if fields.one("accepted"):
            words, _, basis = fields.one("accepted").partition(" | ")
            who, end["accepted_on"] = words.split()
            end["accepted_by"], end["accepted_basis"] = self._person(who), basis
        return end

    def _option(self, line):
        title, pros, cons = (part.strip() for part in line.split(" / "))
        chosen = title.startswith("*")
        option = {"title": title.lstrip("* "), "pros": pros, "cons": cons}
        return {**option, "chosen": True} if chosen else option

    def _add_deviation(self, number, fields):
        self._records.add(
            "deviation", number, number=number, component_ids=self._components(fields),
            not_inside=self._not_inside(fields), title=fields.one("title"),
            drawing_ref=fields.one("drawing"), built_as=fields.one("built_as"),
            reason=fields.one("reason"), alternatives=fields.one("alternatives"),
            raised_on=fields.one("raised"), **self._asked(fields), **self._decided(fields),
            built_on=fields.one("built"), **self._weight(fields))

    def _asked(self, fields):
        if not fields.one("asked"):
            return {}
        moment, who = fields.one("asked").split()
        return {"asked_on": moment, "asked_of": self._person(who)}

    def _decided(self, fields):
        if not fields.one("decided"):
            return {}
        words, _, basis = fields.one("decided").partition(" | ")
        moment, who, decision = words.split()
        return {"decided_on": moment, "decided_by": self._person(who), "decision": decision,
                "basis": basis}

    def _weight(self, fields):
        if not fields.one("weight"):
            return {}
        change, weight_unit, arm, arm_unit = fields.one("weight").split()
        return {"weight_change": float(change), "weight_unit": weight_unit, "arm": float(arm),
                "arm_unit": arm_unit}

    def _add_bulletin(self, key, fields):
        complied, _, basis = (fields.one("complied") or "").partition(" | ")
        self._records.add(
            "bulletin", key, number=fields.one("number"), kind=fields.one("kind"),
            title=fields.one("title"), issuer=fields.one("issuer"),
            issued_on=fields.one("issued"), received_on=fields.one("received"),
            component_ids=self._components(fields), not_inside=self._not_inside(fields),
            applies=fields.yes("applies"), mandatory=fields.yes("mandatory") or None,
            complied_on=complied, basis=basis, note=fields.one("note"))
