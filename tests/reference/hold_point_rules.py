# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Blockers about signatures. Each rule yields what it finds for a closing at the view's moment."""

from blocker import Blocker, must_if
from view import is_accepted
from voiding import voiding_facts


def unsigned_hold_point(view, closing):
    for point, last in _awaited(view, closing):
        if last is None or last.result == "rejected":
            yield Blocker("unsigned-hold-point", must_if(point.required), point,
                          _awaited_word(view, point, last))


def outdated_sign_off(view, closing):
    for point, last in _awaited(view, closing):
        if last is None or not is_accepted(last):
            continue
        facts = voiding_facts(view, closing, point, last)
        if facts:
            heavy = any(fact["heavy"] for fact in facts)
            yield Blocker("outdated-sign-off", must_if(point.required and heavy), point,
                          point.signer_role, facts)


def signature_without_sheet(view, closing):
    for point, last in _awaited(view, closing):
        if (point.signer_role != "builder" and last is not None and is_accepted(last)
                and last.scan_id is None):
            yield Blocker("signature-without-sheet", "should", point)


def _awaited(view, closing):
    """Hold points that are not waived, each with its latest sign-off or None."""
    for point in view.existing("hold_point"):
        if point.closing_id == closing.id and not view.happened(point.waived_on):
            yield point, view.latest_sign_off(point)


def _awaited_word(view, point, last):
    if last is not None and not _findings_entered(view, last):
        return None
    return point.signer_role


def _findings_entered(view, rejection):
    return rejection.inspection_id is not None and any(
        s.inspection_id == rejection.inspection_id for s in view.document.all("squawk"))
