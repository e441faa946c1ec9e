# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Random pictures and papers, what they are linked to, and the credit tasks."""

from document import ARRAYS

SHOWS = ("interior", "exterior", "builder_at_work", "defect", "repair", "signed_sheet", "receipt")


def add_media(pool, count):
    chance = pool.chance
    for number in range(count + 2):
        kind = chance.one(("photo", "photo", "photo", "video", "document"))
        pool.add("media", kind=kind, file=f"photos/{number}.jpg", taken_on=chance.maybe_moment(0.7),
                 imported_on=chance.maybe_moment(0.8), shows=chance.some(list(SHOWS), 2),
                 links=[], **(pool.withdrawal() if number else {}))


def add_credit(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        applies = chance.often(0.8)
        tenths = _shared_out(chance) if applies else {}
        pool.add("credit_task", task=f"Task {number}", not_applicable=not applies,
                 component_ids=pool.some("component", gone, 2),
                 media_ids=pool.some("media", gone, 1) if chance.often(0.4) else [],
                 **tenths, **gone)


def _shared_out(chance):
    columns = ("kit_tenths", "commercial_tenths", "assembly_tenths", "fabrication_tenths")
    shares = dict.fromkeys(columns, 0)
    for _ in range(2):
        shares[chance.one(columns)] += 5
    moved = chance.whole(0, 5)
    giver = max(columns, key=shares.get)
    shares[giver] -= moved
    shares[chance.one(columns)] += moved
    return shares


def add_other_subjects(pool):
    """Records that nothing is judged by, but that a picture may be linked to."""
    for _ in range(2):
        gone = pool.withdrawal()
        pool.add("equipment", name="Radio", component_id=pool.one("component", gone, 0.8), **gone)
        pool.add("expense", spent_on=pool.chance.moment(), what="Rivets", amount=1200,
                 currency="EUR", media_id=pool.one("media", gone, 0.5), **gone)


def add_links(pool):
    """Pictures may stay linked to what was withdrawn."""
    chance = pool.chance
    subjects = [kind for kind in ARRAYS if pool.rows(kind) and kind != "media"]
    favourites = [kind for kind in ("closing", "component") if kind in subjects]
    for media in pool.rows("media"):
        for _ in range(chance.one((0, 1, 1, 2, 4))):
            subject = chance.one(favourites if chance.often(0.4) else subjects)
            media["links"].append({"subject": subject, "id": chance.one(pool.rows(subject))["id"]})
