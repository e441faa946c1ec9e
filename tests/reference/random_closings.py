# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Random closings, nested and reopened, and their hold points."""

import networkx

POINTS = ("own_check", "tool_and_debris_check", "tool_and_debris_check", "independent_check",
          "pre_cover", "stage", "technical_visit", "final")


def add_closings(pool, count):
    for number in range(count):
        closing = _closing(pool, number)
        while _has_cycle(pool):
            closing["permanent"] = False
    if pool.chance.often(0.5):
        pool.add("closing", component_id=pool.one("component", {}), title="The whole",
                 scope="aircraft", permanent=pool.chance.often(0.9), events=_events(pool),
                 late_acceptances=[])


def _closing(pool, number):
    chance = pool.chance
    gone = pool.withdrawal()
    inside = chance.some(pool.live("component"), 3) or [chance.one(pool.live("component"))]
    ancestors = {i for c in inside for i in _line(pool, c["id"])}
    forbidden = {c["id"] for c in inside}
    own = chance.one([c["id"] for c in pool.live("component")
                      if not forbidden & set(_line(pool, c["id"])[1:])
                      and (c["id"] in ancestors or chance.often(0.2))])
    encloses = [c["id"] for c in inside]
    if own is None:
        own = encloses[0]
        encloses = [own]
    return pool.add("closing", component_id=own, title=f"Closing {number}", encloses=encloses,
                    permanent=chance.often(0.85), events=_events(pool), late_acceptances=[],
                    made_by=chance.one(("builder", "builder", "builder", "earlier_builder",
                                        "factory")), **gone)


def _line(pool, component_id):
    """The component, its parent, and so on up."""
    parents = {c["id"]: c.get("parent_id") for c in pool.rows("component")}
    line = []
    while component_id is not None:
        line.append(component_id)
        component_id = parents[component_id]
    return line


def _events(pool):
    chance = pool.chance
    moments = chance.moments(chance.one((0, 0, 1, 1, 2, 3, 4)))
    return [{"opened_on" if place % 2 else "closed_on": moment, "by": pool.person("builder"),
             "reason": "Noted"} for place, moment in enumerate(moments)]


def _has_cycle(pool):
    lies_inside = networkx.DiGraph()
    boxes = [c for c in pool.live("closing") if c["permanent"] and c.get("scope") != "aircraft"]
    for outer in boxes:
        reach = pool.reach(outer)
        lies_inside.add_edges_from(
            (outer["id"], k["id"]) for k in boxes
            if k["component_id"] in reach and k["component_id"] != outer["component_id"])
    return not networkx.is_directed_acyclic_graph(lies_inside)


def add_hold_points(pool):
    chance = pool.chance
    density = chance.one((0.3, 1, 1.5))
    for _ in range(int(len(pool.rows("closing")) * density)):
        gone = pool.withdrawal()
        closing = pool.one("closing", gone, fits=lambda c: c.get("made_by") != "factory")
        if closing is None:
            continue
        role = chance.one(("builder", "adviser", "inspector"))
        waived = chance.maybe_moment(0.15)
        pool.add("hold_point", closing_id=closing, kind=chance.one(POINTS), signer_role=role,
                 required=chance.often(0.75), planned_on=chance.maybe_moment(0.2),
                 waived_on=waived, waived_by=waived and pool.person("inspector"),
                 waived_why=waived and "Not needed here", **gone)
