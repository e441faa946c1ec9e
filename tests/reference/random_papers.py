# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Random inspections, sign-offs, squawks, deviations and bulletins."""

VISITS = ("pre_cover", "stage", "technical_visit", "final", "workshop_visit")
RESULTS = ("accepted", "accepted", "accepted", "accepted_with_findings", "rejected")


def add_inspections(pool, count):
    chance = pool.chance
    for _ in range(count):
        gone = pool.withdrawal()
        asked, held, completed = chance.chain(3)
        # An inspection may go on naming a hold point that was withdrawn.
        points = [h["id"] for h in chance.some(pool.rows("hold_point"), 2)]
        pool.add("inspection", kind=chance.one(VISITS), asked_on=asked, held_on=held,
                 completed_on=completed, inspector_id=pool.person("inspector"),
                 hold_point_ids=points, **gone)


def add_sign_offs(pool):
    chance = pool.chance
    for _ in range(int(len(pool.rows("hold_point")) * chance.one((0.5, 1, 2)))):
        gone = pool.withdrawal()
        point = chance.one(pool.rows("hold_point") if gone else pool.live("hold_point"))
        if point is not None:
            pool.add("sign_off", hold_point_id=point["id"],
                     person_id=pool.signer(point["signer_role"]), **_signed(pool, gone))
    for closing in pool.rows("closing"):
        _add_late_acceptances(pool, closing)


def _add_late_acceptances(pool, closing):
    chance = pool.chance
    for _ in range(chance.one((0, 0, 0, 1, 2))):
        gone = pool.withdrawal()
        sign_off = pool.add("sign_off", person_id=pool.late_acceptor(),
                            remarks="From the photographs", **_signed(pool, gone))
        if not gone or closing.get("withdrawn_on"):
            closing["late_acceptances"].append(sign_off["id"])


def _signed(pool, gone):
    chance = pool.chance
    return {"inspection_id": pool.one("inspection", gone, 0.5), "signed_on": chance.moment(),
            "result": chance.one(RESULTS),
            "scan_id": pool.one("media", gone, 0.5), **gone}


def add_squawks(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        found, fixed, verified = chance.moment(), None, None
        if chance.is_finished():
            found, fixed, verified = chance.moments(3)
            verified = verified if chance.is_finished() else None
        role = chance.one((None, "builder", "adviser", "inspector"))
        pool.add("squawk", number=str(number + 1), title="Something", found_on=found,
                 component_id=pool.one("component", gone, 0.9),
                 severity=chance.one(("airworthiness", "workmanship", "cosmetic")),
                 inspection_id=pool.one("inspection", gone, 0.4), verify_by=role,
                 needs_access_to=pool.some("component", gone, 2) if chance.often(0.3) else [],
                 not_inside=pool.some("closing", gone, 2) if chance.often(0.3) else [],
                 estimate_minutes=chance.maybe(0.7, chance.whole(1, 6) * 10),
                 fixed_on=fixed, correction=fixed and "Made good", verified_on=verified,
                 verified_by=verified and pool.signer(role or "builder"),
                 **_accepted_since(pool, found), **gone)


def _accepted_since(pool, earlier):
    """A squawk's acceptance: by someone who may accept any, not before it was found."""
    if not pool.chance.often(0.15):
        return {}
    moment = pool.chance.moment()
    if moment[:10] <= earlier[:10]:
        moment = earlier
    return {"accepted_on": moment, "accepted_basis": "Within limits",
            "accepted_by": pool.person("designer", "adviser", "inspector")}


def add_deviations(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        raised, asked, decided = chance.moments(3)
        asked = chance.maybe(0.5, asked)
        decided = decided if chance.is_finished() else None
        built, undone = chance.chain(2)
        pool.add("deviation", number=str(number + 1), title="Otherwise", raised_on=raised,
                 component_ids=pool.some("component", gone, 3),
                 not_inside=pool.some("closing", gone, 2) if chance.often(0.3) else [],
                 asked_on=asked, decided_on=decided,
                 decided_by=decided and pool.person("designer"),
                 decision=decided and chance.one(("approved", "rejected")),
                 basis=decided and "Letter", built_on=built,
                 undone_on=chance.maybe(0.5, undone), **gone)


def add_bulletins(pool, count):
    chance = pool.chance
    for number in range(count):
        gone = pool.withdrawal()
        complied = chance.maybe_moment(chance.finished)
        pool.add("bulletin", number=str(number + 1), title="Notice", received_on=chance.moment(),
                 component_ids=pool.some("component", gone, 3),
                 not_inside=pool.some("closing", gone, 2) if chance.often(0.3) else [],
                 applies=chance.one((True, True, False, None)), mandatory=chance.often(0.5),
                 complied_on=complied, basis=complied and "Done as told", **gone)
