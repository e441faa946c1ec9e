# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""May this be closed, and if not, what stands in the way: blockers and state of closings."""

import evidence_rules
import hold_point_rules
import paper_rules
import part_rules
from blocker import Blocker, must_if
from view import View

RULES = [
    hold_point_rules.unsigned_hold_point, hold_point_rules.outdated_sign_off,
    hold_point_rules.signature_without_sheet,
    paper_rules.open_squawk, paper_rules.undone_step, paper_rules.undecided_deviation,
    paper_rules.rejected_deviation_built, paper_rules.open_bulletin, paper_rules.filed_above,
    part_rules.fastener_not_fitted, part_rules.loose_fastener, part_rules.unlocked_fastener,
    part_rules.unmarked_fastener, part_rules.torque_out_of_limits,
    part_rules.measurement_missing, part_rules.measurement_out_of_limits,
    part_rules.missing_part, part_rules.expired_material, part_rules.failed_sample,
    part_rules.curing_material, part_rules.cure_time_unknown, part_rules.uncalibrated_tool,
    evidence_rules.stale_photos, evidence_rules.unticked_check, evidence_rules.thin_record,
]
# Judged beside those, since they need the profile or other closings.
RULES_OF_THEIR_OWN = ["too-few-photos", "inner-closing-open", "inner-closed-early"]


class Verdict:
    """Judges the closings of one document as known at one moment."""

    def __init__(self, words, profile, as_of):
        self.words = words
        self.profile = profile
        self.as_of = as_of
        self._views = {}
        self._blockers = {}

    def view(self, d):
        if d not in self._views:
            self._views[d] = View(self.words, d, self.as_of)
        return self._views[d]

    def found(self, closing, d):
        """What the rules find, excused records included, sorted; nothing of a factory's own
        closing is said here."""
        view = self.view(d)
        rows = [blocker for rule in RULES for blocker in rule(view, closing)]
        rows += evidence_rules.too_few_photos(view, closing, self.profile.interior_photos)
        rows += self._inner_closings(view, closing)
        return sorted(rows, key=lambda b: (b.rule, b.record.id, b.record.kind_of_record))

    def blockers(self, closing, d):
        if closing.made_by == "factory":
            return []
        if (closing.id, d) not in self._blockers:
            rows = [b for b in self.found(closing, d)
                    if not self.words.excused(b.record, closing)]
            for row in rows:
                row.weight = must_if(row.weight == "must" and closing.permanent)
            self._blockers[closing.id, d] = rows
        return self._blockers[closing.id, d]

    def must_blockers(self, closing, d):
        return [b for b in self.blockers(closing, d) if b.weight == "must"]

    def judged_at(self, closing):
        """The moment whose blockers are shown: the closing moment, else as_of."""
        return self.view(self.as_of).closing_moment(closing) or self.as_of

    def state(self, closing, d):
        closing_moment = self.view(d).closing_moment(closing)
        if closing_moment is not None:
            early = self._closed_early(closing, closing_moment)
            return "closed_early" if early else "closed"
        waiting = [b.waits_for for b in self.must_blockers(closing, d)]
        if not waiting:
            return "clear"
        if None in waiting:
            return "hold"
        return "ready_to_sign" if set(waiting) == {"builder"} else "ready_to_inspect"

    def _closed_early(self, closing, closing_moment):
        if self.view(self.as_of).accepted_late(closing, closing_moment):
            return False
        if closing.made_by == "factory":
            return self.profile.factory_needs_document and not has_document(
                self.words.document, closing)
        return bool(self.must_blockers(closing, closing_moment))

    def _inner_closings(self, view, closing):
        for inner in self.words.inner(closing):
            state = self.state(inner, view.d)
            if state == "closed_early":
                yield Blocker("inner-closed-early", "must", inner)
            elif state != "closed":
                yield Blocker("inner-closing-open", "must", inner,
                              self._whose_word(inner, state, view.d))

    def _whose_word(self, closing, state, d):
        if state in ("clear", "ready_to_sign"):
            return "builder"
        if state == "ready_to_inspect":
            inspector = any(b.waits_for == "inspector" for b in self.must_blockers(closing, d))
            return "inspector" if inspector else "adviser"
        return None


def has_document(document, closing):
    return any(m.kind == "document" and any(
        link["subject"] == "closing" and link["id"] == closing.id for link in m.links)
        for m in document.all("media"))
