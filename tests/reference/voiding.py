# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What has been done since a signature, so that it no longer covers what it was given for."""

from moment import after, day, ended


def voiding_facts(view, closing, hold_point, sign_off):
    """Facts after the sign-off that had happened at the view's moment, in order."""
    found = []
    for record, moment, heavy in _candidates(view, closing, hold_point, sign_off):
        if moment and after(moment, sign_off.signed_on) and view.happened(moment):
            found.append({"record": record.kind_of_record, "id": record.id, "moment": moment,
                          "heavy": heavy})
    return sorted(found, key=lambda f: (f["record"], f["id"], f["moment"], f["heavy"]))


def _candidates(view, closing, hold_point, sign_off):
    yield from _sessions(view, closing, hold_point, sign_off)
    yield from _work_in_reach(view, closing)
    yield from _squawks(view, closing, sign_off)
    for opened in [closing, *view.words.inner(closing)]:
        yield from ((opened, e.get("opened_on"), True) for e in opened.events)
    if hold_point.kind == "tool_and_debris_check":
        yield from _other_sign_offs(view, closing, hold_point, sign_off)


def _sessions(view, closing, hold_point, sign_off):
    words = view.words
    asked_for = {s.id for s in _own_findings(view, sign_off)}
    for session in view.document.all("work_session"):
        step = view.document.step_of(session)
        if words.closes_inner(step, closing) or session.squawk_id in asked_for:
            continue
        end = ended(session)
        in_closing_step = step is not None and step.closes == closing.id
        if (words.in_reach(session, closing) and not words.excused(session, closing)
                and session.kind not in ("inspection", "planning")
                and session.changed_inspected is not False):
            yield session, end, session.changed_inspected is True
        elif (hold_point.kind == "tool_and_debris_check" and in_closing_step
              and day(end) > day(sign_off.signed_on)):
            yield session, end, False


def _work_in_reach(view, closing):
    words = view.words
    dates = {
        "step": ("done_on",),
        "deviation": ("raised_on", "built_on", "undone_on"),
        "bulletin": ("complied_on",),
        "fastener": ("fitted_on", "torqued_on", "removed_on"),
        "material_use": ("used_on",),
    }
    for kind, fields in dates.items():
        for record in view.document.all(kind):
            if not words.in_reach(record, closing) or words.excused(record, closing):
                continue
            if kind in ("step", "material_use") and words.closes_inner(
                    view.document.step_of(record), closing):
                continue
            yield from ((record, getattr(record, field), True) for field in fields)


def _squawks(view, closing, sign_off):
    asked_for = {s.id for s in _own_findings(view, sign_off)}
    for squawk in view.document.all("squawk"):
        if (squawk.severity != "cosmetic" and squawk.id not in asked_for
                and view.words.in_reach(squawk, closing)):
            yield squawk, squawk.found_on, True
            yield squawk, squawk.fixed_on, True


def _own_findings(view, sign_off):
    if sign_off.inspection_id is None:
        return []
    return [s for s in view.document.all("squawk") if s.inspection_id == sign_off.inspection_id]


def _other_sign_offs(view, closing, hold_point, sign_off):
    for other in view.document.all("sign_off"):
        of = view.document.find("hold_point", other.hold_point_id)
        if (of is not None and of.closing_id == closing.id and of.id != hold_point.id
                and day(other.signed_on) > day(sign_off.signed_on)):
            yield other, other.signed_on, False
