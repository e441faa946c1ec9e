# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Blockers about squawks, deviations, bulletins and steps."""

from blocker import Blocker, must_if
from words import named_components


def squawk_is_open(view, squawk):
    return (view.happened(squawk.found_on) and not view.happened(squawk.verified_on)
            and not view.happened(squawk.accepted_on))


def deviation_is_undecided(view, deviation):
    return view.happened(deviation.raised_on) and not view.happened(deviation.decided_on)


def deviation_stands_rejected(view, deviation):
    return (view.happened(deviation.decided_on) and deviation.decision == "rejected"
            and view.happened(deviation.built_on) and not view.happened(deviation.undone_on))


def bulletin_is_open(view, bulletin):
    return (view.happened(bulletin.received_on) and bulletin.applies is not False
            and not view.happened(bulletin.complied_on))


def open_squawk(view, closing):
    for squawk in view.document.all("squawk"):
        if not squawk_is_open(view, squawk):
            continue
        access = view.words.access_set(squawk)
        stands = access & view.words.reach(closing) if access else view.words.in_reach(
            squawk, closing)
        if stands:
            fixed = view.happened(squawk.fixed_on)
            yield Blocker("open-squawk", must_if(squawk.severity != "cosmetic"), squawk,
                          (squawk.verify_by or "builder") if fixed else None)


def undone_step_in_reach(view, closing):
    for step in view.in_reach("step", closing):
        if _holds_up(view, step, closing):
            yield Blocker("undone-step", "must", step)


def undone_step(view, closing):
    before = set()
    for closing_step in view.existing("step"):
        if closing_step.closes == closing.id and not view.happened(closing_step.dropped_on):
            before |= view.words.steps_before(closing_step)
    for step in view.existing("step"):
        if ((step.id in before or view.words.in_reach(step, closing))
                and _holds_up(view, step, closing)):
            yield Blocker("undone-step", "must", step)


def undecided_deviation(view, closing):
    for deviation in view.in_reach("deviation", closing):
        if deviation_is_undecided(view, deviation):
            yield Blocker("undecided-deviation", "must", deviation)


def rejected_deviation_built(view, closing):
    for deviation in view.in_reach("deviation", closing):
        if deviation_stands_rejected(view, deviation):
            yield Blocker("rejected-deviation-built", "must", deviation)


def open_bulletin(view, closing):
    for bulletin in view.in_reach("bulletin", closing):
        if bulletin_is_open(view, bulletin):
            yield Blocker("open-bulletin", must_if(bulletin.mandatory or bulletin.applies is None),
                          bulletin)


def filed_above(view, closing):
    above = set()
    for component_id in closing.encloses:
        above |= view.words.proper_ancestors(component_id)
    for record in _open_papers(view):
        if (above.intersection(named_components(record))
                and not view.words.in_reach(record, closing)
                and closing.id not in record.not_inside):
            yield Blocker("filed-above", "should", record)


def _open_papers(view):
    for squawk in view.document.all("squawk"):
        if (squawk.severity != "cosmetic" and not squawk.needs_access_to
                and squawk_is_open(view, squawk)):
            yield squawk
    for deviation in view.document.all("deviation"):
        if deviation_is_undecided(view, deviation) or deviation_stands_rejected(view, deviation):
            yield deviation
    for bulletin in view.document.all("bulletin"):
        if bulletin_is_open(view, bulletin):
            yield bulletin


def _holds_up(view, step, closing):
    return (not view.done_or_dropped(step) and step.closes != closing.id
            and not view.words.closes_inner(step, closing))
