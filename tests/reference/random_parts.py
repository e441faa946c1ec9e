# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Random fasteners, measurements, part lines, materials, tools and checks."""

LOCKINGS = ("self_locking_nut", "split_pin", "safety_wire", "jam_nut", "lock_tab",
            "thread_locker", "none")


def _belongs(pool, gone):
    """Where a record is, which step it is part of, and what it may follow."""
    return {"component_id": pool.one("component", gone),
            "step_id": pool.one("step", gone, 0.35),
            "may_follow": pool.some("closing", gone, 2) if pool.chance.often(0.15) else []}


def _accepted(pool, probability=0.15):
    moment = pool.chance.maybe_moment(probability)
    return {"accepted_on": moment, "accepted_by": moment and pool.person("inspector"),
            "accepted_basis": moment and "Within limits"}


def _limits(chance):
    low = chance.maybe(0.7, chance.whole(1, 4) * 5)
    high = chance.maybe(0.7, chance.whole(4, 6) * 5)
    return low, high


def add_tools(pool, count):
    chance = pool.chance
    for number in range(count):
        calibrations = []
        for _ in range(chance.whole(0, 4)):
            calibrated, due = chance.moments(2)
            calibrations.append({"calibrated_on": calibrated, "due_on": due})
        pool.add("tool", name=f"Tool {number}", needs_calibration=chance.often(0.7),
                 calibrations=calibrations, **(pool.withdrawal() if number else {}))


def add_fasteners(pool, count):
    chance = pool.chance
    for _ in range(count):
        gone = pool.withdrawal()
        low, high = _limits(chance)
        fitted, torqued, marked = chance.chain(3)
        if fitted and chance.often(0.1):
            fitted = None
        locked = removed = None
        if fitted:
            locked = _not_before(chance, fitted) if chance.is_finished() else None
            removed = _not_before(chance, fitted) if chance.often(0.2) else None
        value = chance.whole(2, 64) / 2 if torqued else None
        pool.add("fastener", place="Row", torque_min=low, torque_max=high, torque_value=value,
                 torque_drag=chance.maybe(0.4, chance.whole(0, 12) / 2), fitted_on=fitted,
                 torqued_on=torqued, marked_on=marked, locked_on=locked, removed_on=removed,
                 removed_why=removed and "Worn", locking=chance.one(LOCKINGS),
                 tool_id=pool.one("tool", gone, 0.6), planned_on=chance.maybe_moment(0.3),
                 **_belongs(pool, gone), **_accepted(pool), **gone)


def _not_before(chance, earlier):
    """A moment that comes later, or is the same."""
    later = chance.moment()
    return later if later[:10] > earlier[:10] else earlier


def add_measurements(pool, count):
    chance = pool.chance
    places = chance.some(pool.live("component"), 3)
    for _ in range(count):
        gone = pool.withdrawal()
        low, high = _limits(chance)
        measured = chance.maybe_moment(chance.finished)
        fields = _belongs(pool, gone)
        if places and chance.often(0.7):
            fields["component_id"] = chance.one(places)["id"]
        pool.add("measurement", what=chance.one(("Gap", "Gap", "Travel")), minimum=low,
                 maximum=high, value=measured and chance.whole(2, 64) / 2, measured_on=measured,
                 tool_id=pool.one("tool", gone, 0.6), planned_on=chance.maybe_moment(0.3),
                 **fields, **_accepted(pool), **gone)


def add_part_lines(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        ordered, received = chance.chain(2)
        fields = _belongs(pool, gone)
        if chance.often(0.1):
            fields["component_id"] = None
        quantity = chance.whole(1, 4)
        amount = quantity if chance.is_finished() else chance.whole(0, 4)
        damaged = chance.whole(0, amount) if chance.often(0.2) else None
        pool.add("part_line", name=f"Line {number}", quantity=quantity, ordered_on=ordered,
                 received_quantity=amount if received or chance.often(0.1) else None,
                 received_on=received, damaged_quantity=damaged if received else None,
                 planned_on=chance.maybe_moment(0.3), **fields, **gone)


def add_material_lots(pool, count):
    chance = pool.chance
    for number in range(count):
        pool.add("material_lot", name=f"Lot {number}", cures=chance.often(0.5),
                 expires_on=chance.maybe_moment(0.5), **(pool.withdrawal() if number else {}))


def add_material_uses(pool, count):
    chance = pool.chance
    for _ in range(count):
        gone = pool.withdrawal()
        lots = pool.some("material_lot", gone, 2) or [pool.one("material_lot", gone)]
        pool.add("material_use", lot_ids=lots, used_on=chance.moment(),
                 cure_minutes=chance.maybe(0.7, chance.one((0, 1, 30, 480, 1440, 4320))),
                 sample=chance.one(("none", "kept", "good", "failed", "failed")),
                 sample_on=chance.maybe_moment(0.7), **_belongs(pool, gone),
                 **_accepted(pool, 0.3), **gone)


def add_checks(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        closing = pool.one("closing", gone, fits=lambda c: c.get("made_by") != "factory")
        if closing is None:
            continue
        done = chance.maybe_moment(chance.finished)
        pool.add("check", closing_id=closing, item=f"Item {number}", done_on=done,
                 done_by=done and pool.person("builder"), not_applicable=chance.often(0.15),
                 planned_on=chance.maybe_moment(0.3),
                 may_follow=pool.some("closing", gone, 3) if chance.often(0.4) else [], **gone)
