# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Which closings one visit of an inspector or adviser could cover, after how much more work."""

_SIGNATURE_RULES = ("unsigned-hold-point", "outdated-sign-off")
_COUNTED_AS_WORK = ("undone-step", "open-squawk", "inner-closing-open")


def visit_plan(consequences):
    plan = _Plan(consequences)
    wanted = [c for c in consequences.unclosed() if c.permanent and _needs_visit(plan, c)]
    for closing in wanted:
        if consequences.states[closing.id] != "hold":
            plan.add_ready(closing)
    left = [c for c in wanted if consequences.states[c.id] == "hold"]
    while left:
        nearest = min(left, key=lambda c: (plan.marginal_minutes(c), c.id))
        plan.add(nearest)
        left.remove(nearest)
    return plan.rows


class _Plan:
    def __init__(self, consequences):
        self.consequences = consequences
        self.rows = []
        self._planned = {}
        self._minutes = 0

    def marginal_minutes(self, closing):
        return sum(minutes or 0 for minutes in self._new_work(closing).values())

    def add_ready(self, closing):
        """The rules say 0 minutes, whatever is open in boxes within one that a factory made."""
        self.rows.append({"closing": closing.id, "cumulative_minutes": 0, "unknown_estimates": 0,
                          "other_blockers": 0})

    def add(self, closing):
        work = self._new_work(closing)
        self._minutes += self.marginal_minutes(closing)
        self.rows.append({
            "closing": closing.id,
            "cumulative_minutes": self._minutes,
            "unknown_estimates": sum(minutes is None for minutes in work.values()),
            "other_blockers": sum(b.waits_for is None and b.rule not in _COUNTED_AS_WORK
                                  for b in self.consequences.musts(closing)),
        })
        self._planned.update(work)

    def _new_work(self, closing):
        """Minutes, or None where nobody estimated, by record that no earlier row holds."""
        work = {}
        for box in self._boxes(closing, {}).values():
            for blocker in self.consequences.musts(box):
                if blocker.rule in ("undone-step", "open-squawk"):
                    work[blocker.key] = self._minutes_of(blocker.record)
        return {key: minutes for key, minutes in work.items() if key not in self._planned}

    def _minutes_of(self, record):
        if self.consequences.now.happened(record.fixed_on):
            return 0
        return record.estimate_minutes

    def _boxes(self, closing, seen):
        """The closing and the unclosed boxes within it, and within those."""
        seen[closing.id] = closing
        for inner in self.consequences.words.inner(closing):
            if inner.id not in seen and not self.consequences.is_closed(inner):
                self._boxes(inner, seen)
        return seen


def _needs_visit(plan, closing):
    consequences = plan.consequences
    return any(b.rule in _SIGNATURE_RULES and b.record.signer_role != "builder"
               for b in consequences.verdict.blockers(closing, consequences.verdict.as_of))
