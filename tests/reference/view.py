# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What had happened, what existed and what was closed at one moment."""

from moment import after, before, latest

# The dates of a record that show it was there, whatever its plan says.
_OWN_DATES = {
    "step": ("done_on", "dropped_on"),
    "fastener": ("fitted_on", "torqued_on"),
    "measurement": ("measured_on",),
    "part_line": ("ordered_on", "received_on"),
    "check": ("done_on",),
    "hold_point": ("waived_on",),
}


class View:
    """The records at moment d, as known at as_of."""

    def __init__(self, words, d, as_of):
        self.words = words
        self.document = words.document
        self.d = d
        self.as_of = as_of

    def happened(self, moment):
        return moment is not None and not after(moment, self.d) and not after(moment, self.as_of)

    def exists(self, record):
        dates = _OWN_DATES.get(record.kind_of_record)
        if dates is None:
            return True
        if self.happened(record.removed_on):
            return False
        return (record.planned_on is None or self.happened(record.planned_on)
                or any(self.happened(getattr(record, date)) for date in dates))

    def existing(self, kind):
        return [record for record in self.document.all(kind) if self.exists(record)]

    def in_reach(self, kind, closing):
        """Existing records of a kind in the reach of a closing."""
        return [r for r in self.existing(kind) if self.words.in_reach(r, closing)]

    def closing_moment(self, closing):
        """When the closing was last closed; None while it is open."""
        past = [e for e in closing.events
                if self.happened(e.get("closed_on") or e.get("opened_on"))]
        return past[-1].get("closed_on") if past else None

    def accepted_late(self, closing, closing_moment):
        """An acceptance by as_of, whatever d, that does not come before the closing moment."""
        sign_offs = (self.document.find("sign_off", i) for i in closing.late_acceptances)
        return any(is_accepted(s) and not after(s.signed_on, self.as_of)
                   and not before(s.signed_on, closing_moment) for s in sign_offs)

    def latest_sign_off(self, hold_point):
        made = [s for s in self.document.all("sign_off")
                if s.hold_point_id == hold_point.id and self.happened(s.signed_on)]
        return latest(made, lambda s: s.signed_on)

    def done_or_dropped(self, step):
        return self.happened(step.done_on) or self.happened(step.dropped_on)

    def direct_predecessors(self, step):
        """Existing steps right before; those withdrawn or not there are passed through."""
        found = {}
        for step_id in step.after:
            earlier = self.document.find("step", step_id)
            if earlier is not None and self.exists(earlier):
                found[step_id] = earlier
            else:
                absent = earlier or self.document.withdrawn_steps[step_id]
                found.update((s.id, s) for s in self.direct_predecessors(absent))
        return list(found.values())


def is_accepted(sign_off):
    return sign_off.result in ("accepted", "accepted_with_findings")
