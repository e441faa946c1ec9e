# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What follows from the verdicts: out of reach, last chance, workable, unlock, to complete."""

import paper_rules
import part_rules
from verdict import has_document

OUT_OF_REACH_RULES = [
    paper_rules.open_squawk, paper_rules.undone_step_in_reach, paper_rules.undecided_deviation,
    paper_rules.rejected_deviation_built, paper_rules.open_bulletin,
    part_rules.fastener_not_fitted, part_rules.loose_fastener, part_rules.unlocked_fastener,
    part_rules.torque_out_of_limits, part_rules.measurement_out_of_limits,
    part_rules.failed_sample,
]
BADGE_ORDER = ("closed_early", "hold", "ready_to_inspect", "ready_to_sign", "clear", "closed")
BOXES = ("control_surface", "lifting_surface", "fuselage_section", "fuel_tank")


class Consequences:
    """The lists of one answer."""

    def __init__(self, verdict):
        self.verdict = verdict
        self.words = verdict.words
        self.document = verdict.words.document
        self.now = verdict.view(verdict.as_of)
        self.closings = sorted(self.document.all("closing"), key=lambda c: c.id)
        self.states = {c.id: verdict.state(c, verdict.as_of) for c in self.closings}

    def is_closed(self, closing):
        return self.states[closing.id] in ("closed", "closed_early")

    def unclosed(self):
        return [c for c in self.closings if not self.is_closed(c)]

    def sealed(self):
        """Closed and permanent."""
        return [c for c in self.closings if c.permanent and self.is_closed(c)]

    def musts(self, closing):
        return self.verdict.must_blockers(closing, self.verdict.as_of)

    def out_of_reach(self):
        behind = {}
        for closing in self.sealed():
            for rule in OUT_OF_REACH_RULES:
                for row in rule(self.now, closing):
                    if not self.words.excused(row.record, closing):
                        behind.setdefault(row.key, set()).add(closing.id)
        return [{"record": kind, "id": i, "closings": sorted(ids)}
                for (kind, i), ids in sorted(behind.items())]

    def last_chance(self):
        rows = []
        for closing in self.closings:
            if self.states[closing.id] in ("clear", "ready_to_sign", "ready_to_inspect"):
                items = self._advice(closing) | self._excused_but_open(closing)
                if items:
                    rows.append({"closing": closing.id, "items": [
                        {"record": kind, "id": i} for kind, i in sorted(items)]})
        return rows

    def _advice(self, closing):
        return {b.key for b in self.verdict.blockers(closing, self.verdict.as_of)
                if b.weight == "should"}

    def _excused_but_open(self, closing):
        return {b.key for b in self.verdict.found(closing, self.verdict.as_of)
                if self.words.excused(b.record, closing)
                and (b.record.closing_id == closing.id or self.words.in_reach(b.record, closing))}

    def workable(self):
        steps = [s for s in self.now.existing("step") if self._is_workable(s)]
        return [s.id for s in sorted(steps, key=self._rank)]

    def _is_workable(self, step):
        if self.now.done_or_dropped(step):
            return False
        if not all(self.now.done_or_dropped(s) for s in self.now.direct_predecessors(step)):
            return False
        if any(self.words.in_reach(step, c) and not self.words.excused(step, c)
               for c in self.sealed()):
            return False
        return step.closes is None or self.states[step.closes] == "clear"

    def _rank(self, step):
        lacks_parts = any(p.component_id == step.component_id and part_rules.is_missing(self.now, p)
                          for p in self.now.existing("part_line"))
        holds_up = sum(any(b.key == ("step", step.id) for b in self.musts(c))
                       for c in self.closings if self.states[c.id] == "hold")
        return (lacks_parts, -holds_up, _missing_last(step.position),
                _missing_last(step.estimate_minutes), step.id)

    def unlock(self):
        holding = {}
        for closing in self.unclosed():
            for blocker in self.musts(closing):
                if blocker.waits_for is None:
                    holding.setdefault(blocker.key, set()).add(closing.id)
        rows = sorted(holding.items(), key=lambda row: (-len(row[1]), row[0]))
        return [{"record": kind, "id": i, "closings": sorted(ids)} for (kind, i), ids in rows]

    def to_complete(self):
        rows = [("factory-closing-without-document", c) for c in self.closings
                if c.made_by == "factory" and not has_document(self.document, c)]
        rows += [("closing-step-not-done", s) for s in self.now.existing("step")
                 if s.closes is not None and not self.now.done_or_dropped(s)
                 and self.is_closed(self.document.find("closing", s.closes))]
        rows += [("record-without-place", r) for r in self._open_papers_without_place()]
        rows += [("part-without-closing", c) for c in self._boxes_without_closing()]
        rows.sort(key=lambda row: (row[0], row[1].id, row[1].kind_of_record))
        return [{"what": what, "record": r.kind_of_record, "id": r.id} for what, r in rows]

    def _open_papers_without_place(self):
        now = self.now
        for deviation in self.document.all("deviation"):
            if not deviation.component_ids and (
                    paper_rules.deviation_is_undecided(now, deviation)
                    or paper_rules.deviation_stands_rejected(now, deviation)):
                yield deviation
        for bulletin in self.document.all("bulletin"):
            if not bulletin.component_ids and paper_rules.bulletin_is_open(now, bulletin):
                yield bulletin

    def _boxes_without_closing(self):
        enclosed = set()
        for closing in self.closings:
            if closing.permanent and closing.scope == "region":
                enclosed |= self.words.reach(closing)
        for component in self.document.all("component"):
            if (component.kind in BOXES and component.never_enclosed_why is None
                    and not self.words.subtree(component.id) & enclosed):
                yield component

    def badges(self):
        rows = []
        for component in sorted(self.document.all("component"), key=lambda c: c.id):
            below = self.words.subtree(component.id)
            states = [self.states[c.id] for c in self.closings if c.component_id in below]
            if states:
                rows.append({"id": component.id, "state": min(states, key=BADGE_ORDER.index)})
        return rows


def _missing_last(number):
    return (number is None, number or 0)
