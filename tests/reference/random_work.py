# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Random people, components, steps and work sessions."""

import networkx

KINDS_OF_PART = ("assembly", "control_surface", "lifting_surface", "fuselage_section",
                 "fuel_tank", "part", "part", "electrical")
KINDS_OF_WORK = ("fabrication", "assembly", "finishing", "rework", "inspection", "planning",
                 "other")


def add_people(pool):
    for roles in (["builder"], ["inspector"], ["adviser"], ["helper"], ["designer"],
                  ["builder", "inspector"], ["earlier_builder", "adviser"]):
        pool.add("person", name="Person", roles=roles)
    if pool.chance.often(0.3):
        pool.add("person", name="Nobody", roles=["inspector"], **pool.withdrawal(1))


def add_components(pool, count):
    chance = pool.chance
    depth = chance.one((0.6, 0.9, 1.0))
    for number in range(count):
        parent = chance.one(pool.rows("component")) if chance.often(depth) else None
        gone = pool.withdrawal() if number else {}
        if parent and parent.get("withdrawn_on"):
            gone = pool.withdrawal(1)
        pool.add("component", parent_id=parent and parent["id"], name=f"Part {number}",
                 position=chance.maybe(0.5, number), kind=chance.one(KINDS_OF_PART),
                 never_enclosed_why=chance.maybe(0.1, "Always open"), **gone)


def add_steps(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        done, dropped = chance.maybe_moment(chance.finished), chance.maybe_moment(0.1)
        # A live step may come after a withdrawn one: it is passed through.
        earlier = [s["id"] for s in chance.some(pool.rows("step"), 3)] if chance.often(0.6) else []
        pool.add("step", component_id=pool.one("component", gone), title=f"Step {number}",
                 position=chance.maybe(0.6, chance.whole(1, 4)),
                 planned_on=chance.maybe_moment(0.3),
                 estimate_minutes=chance.maybe(0.8, chance.whole(1, 6) * 15), after=earlier,
                 closes=pool.one("closing", gone, 0.35),
                 may_follow=pool.some("closing", gone, 3) if chance.often(0.3) else [],
                 done_on=done, dropped_on=dropped, **gone)
    _let_later_steps_follow(pool)


def _let_later_steps_follow(pool):
    """What comes after the closing step, inside the closing, has to be allowed to."""
    order = networkx.DiGraph()
    steps = {s["id"]: s for s in pool.rows("step")}
    order.add_nodes_from(steps)
    order.add_edges_from((e, s["id"]) for s in steps.values() for e in s["after"])
    reach = {c["id"]: pool.reach(c) for c in pool.live("closing")}
    for step in pool.live("step"):
        closing = step["closes"]
        if closing is None:
            continue
        for later in (steps[i] for i in networkx.descendants(order, step["id"])):
            if later["component_id"] in reach[closing] and closing not in later["may_follow"]:
                later["may_follow"].append(closing)


def add_sessions(pool, count):
    chance = pool.chance
    for _ in range(count):
        gone = pool.withdrawal()
        minutes = chance.maybe(0.85, chance.one((1, 15, 30, 31, 60, 240, 600, 1440, 3000)))
        pool.add("work_session", began=chance.moment(), minutes=minutes,
                 component_id=pool.one("component", gone, 0.6),
                 step_id=pool.one("step", gone, 0.4), squawk_id=pool.one("squawk", gone, 0.2),
                 kind=chance.one(KINDS_OF_WORK),
                 changed_inspected=chance.one((True, False, None, None)),
                 workers=_workers(pool, gone, minutes), **gone)


def _workers(pool, gone, minutes):
    workers = []
    for person in pool.some("person", gone, 3):
        worker = {"person_id": person}
        if minutes and pool.chance.often(0.5):
            worker["minutes"] = pool.chance.whole(1, minutes)
        workers.append(worker)
    return workers
