# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Blockers about fasteners, measurements, part lines, materials and tools."""

from blocker import Blocker
from moment import after, day, latest, plus_minutes, wall_clock

LOCKED_BY_HAND = ("split_pin", "safety_wire", "jam_nut", "lock_tab")


def fastener_not_fitted(view, closing):
    for fastener in view.in_reach("fastener", closing):
        if not view.happened(fastener.fitted_on):
            yield Blocker("fastener-not-fitted", "must", fastener)


def loose_fastener(view, closing):
    for fastener in view.in_reach("fastener", closing):
        limited = fastener.torque_min is not None or fastener.torque_max is not None
        if (limited and view.happened(fastener.fitted_on)
                and not view.happened(fastener.torqued_on)):
            yield Blocker("loose-fastener", "must", fastener)


def unlocked_fastener(view, closing):
    for fastener in view.in_reach("fastener", closing):
        if (fastener.locking in LOCKED_BY_HAND and view.happened(fastener.fitted_on)
                and not view.happened(fastener.locked_on)):
            yield Blocker("unlocked-fastener", "must", fastener)


def unmarked_fastener(view, closing):
    for fastener in view.in_reach("fastener", closing):
        if view.happened(fastener.torqued_on) and not view.happened(fastener.marked_on):
            yield Blocker("unmarked-fastener", "should", fastener)


def torque_out_of_limits(view, closing):
    for fastener in view.in_reach("fastener", closing):
        if (view.happened(fastener.torqued_on) and fastener.torque_value is not None
                and not view.happened(fastener.accepted_on)
                and _outside(fastener.torque_value - (fastener.torque_drag or 0),
                             fastener.torque_min, fastener.torque_max)):
            yield Blocker("torque-out-of-limits", "must", fastener)


def measurement_missing(view, closing):
    for measurement in view.in_reach("measurement", closing):
        if not _measured(view, measurement):
            yield Blocker("measurement-missing", "must", measurement)


def measurement_out_of_limits(view, closing):
    for measurement in view.in_reach("measurement", closing):
        last = latest(_measured(view, measurement), lambda m: m.measured_on)
        if (last is measurement and not view.happened(last.accepted_on)
                and _outside(last.value, last.minimum, last.maximum)):
            yield Blocker("measurement-out-of-limits", "must", last)


def is_missing(view, part_line):
    usable = 0
    if view.happened(part_line.received_on):
        usable = part_line.received_quantity - part_line.damaged_quantity
    return part_line.quantity > usable


def missing_part(view, closing):
    for part_line in view.in_reach("part_line", closing):
        if is_missing(view, part_line):
            yield Blocker("missing-part", "must", part_line)


def expired_material(view, closing):
    for use in _uses(view, closing):
        if not view.happened(use.accepted_on) and any(
                lot.expires_on is not None and after(use.used_on, lot.expires_on)
                for lot in _lots(view, use)):
            yield Blocker("expired-material", "must", use)


def failed_sample(view, closing):
    for use in _uses(view, closing):
        if (use.sample == "failed" and view.happened(use.sample_on)
                and not view.happened(use.accepted_on)):
            yield Blocker("failed-sample", "must", use)


def curing_material(view, closing):
    for use in _uses(view, closing):
        minutes = use.cure_minutes or 0
        if minutes > 0 and plus_minutes(wall_clock(use.used_on), minutes) > wall_clock(view.d):
            yield Blocker("curing-material", "must", use)


def cure_time_unknown(view, closing):
    for use in _uses(view, closing):
        if use.cure_minutes is None and any(lot.cures for lot in _lots(view, use)):
            yield Blocker("cure-time-unknown", "should", use)


def uncalibrated_tool(view, closing):
    used = [(f, f.torqued_on) for f in view.in_reach("fastener", closing)]
    used += [(m, m.measured_on) for m in view.in_reach("measurement", closing)]
    for record, moment in used:
        tool = view.document.find("tool", record.tool_id)
        if (view.happened(moment) and tool is not None and tool.needs_calibration
                and not _in_calibration(view, tool, moment)):
            yield Blocker("uncalibrated-tool", "should", record)


def _in_calibration(view, tool, moment):
    by_then = [(day(c["calibrated_on"]), place, c) for place, c in enumerate(tool.calibrations)
               if view.happened(c["calibrated_on"]) and not after(c["calibrated_on"], moment)]
    if not by_then:
        return False
    last = max(by_then, key=lambda row: row[:2])[2]
    return not after(moment, last["due_on"])


def _outside(value, low, high):
    return (low is not None and value < low) or (high is not None and value > high)


def _measured(view, measurement):
    """All that measured the same thing by now, excused or not."""
    return [m for m in view.document.all("measurement")
            if m.component_id == measurement.component_id and m.what == measurement.what
            and view.happened(m.measured_on)]


def _uses(view, closing):
    return [u for u in view.in_reach("material_use", closing) if view.happened(u.used_on)]


def _lots(view, use):
    return [view.document.find("material_lot", lot_id) for lot_id in use.lot_ids]
