#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes a random interchange document that keeps every invariant and is full of ties."""

import argparse
import json

from document import ARRAYS
from random_choice import Chance
from random_closings import add_closings, add_hold_points
from random_evidence import add_credit, add_links, add_media, add_other_subjects
from random_papers import add_bulletins, add_deviations, add_inspections, add_sign_offs, add_squawks
from random_parts import (add_checks, add_fasteners, add_material_lots, add_material_uses,
                          add_measurements, add_part_lines, add_tools)
from random_pool import Pool
from random_work import add_components, add_people, add_sessions, add_steps

PROFILES = ("ca", "us", "gb", "plain", "plain")


def random_project(seed, size=None):
    """A document as a tree, and a few moments that are worth asking about."""
    chance = Chance(seed)
    size = size or chance.one((3, 6, 10, 20))
    pool = Pool(chance, chance.one(PROFILES))
    add_people(pool)
    add_components(pool, size)
    add_media(pool, _amount(chance, size))
    add_closings(pool, max(1, size // 2))
    add_steps(pool, _amount(chance, size))
    add_hold_points(pool)
    add_inspections(pool, 3)
    add_sign_offs(pool)
    add_squawks(pool, _amount(chance, size))
    add_deviations(pool, _amount(chance, size) // 2)
    add_bulletins(pool, _amount(chance, size) // 3)
    add_tools(pool, 3)
    add_fasteners(pool, _amount(chance, size))
    add_measurements(pool, _amount(chance, size))
    add_part_lines(pool, _amount(chance, size) // 2)
    add_material_lots(pool, 4)
    add_material_uses(pool, _amount(chance, size))
    add_checks(pool, _amount(chance, size) // 2)
    add_sessions(pool, _amount(chance, size))
    add_credit(pool, _amount(chance, size) // 2)
    add_other_subjects(pool)
    add_links(pool)
    return _document(pool), _moments(pool)


def _amount(chance, size):
    """Many projects have none, or few, of some type; else everything would always be on hold."""
    shares = (0, 0, 0, 0.2, 0.4) if chance.quiet else (0, 0.2, 0.5, 1, 1.5)
    return int(size * chance.one(shares))


def _document(pool):
    chance = pool.chance
    project = {"name": "Made up", "profile": pool.profile, "time_zone": "UTC"}
    if chance.often(0.8):
        project["builder_id"] = pool.person("builder")
    tree = {"format": "lastrivet-records", "version": 1, "hold_points_given": True,
            "project": project}
    for kind, array in ARRAYS.items():
        rows = pool.rows(kind)
        chance.random.shuffle(rows)
        tree[array] = [{k: v for k, v in row.items() if v is not None or chance.often(0.1)}
                       for row in rows]
    return tree


def _moments(pool):
    """Moments of closings and signatures, some others, and the end."""
    chance = pool.chance
    dated = [e.get("closed_on") or e.get("opened_on")
             for c in pool.rows("closing") for e in c.get("events", [])]
    dated += [s["signed_on"] for s in pool.rows("sign_off")]
    chosen = chance.some(sorted(set(dated)), 2) + chance.moments(2) + ["2026-06-30"]
    return sorted(set(chosen))


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("seed", type=int)
    parser.add_argument("--size", type=int, help="number of components")
    parser.add_argument("--moments", action="store_true",
                        help="print moments to ask about in place of the document")
    arguments = parser.parse_args()
    document, moments = random_project(arguments.seed, arguments.size)
    print("\n".join(moments) if arguments.moments else json.dumps(document, indent=1))


if __name__ == "__main__":
    main()
