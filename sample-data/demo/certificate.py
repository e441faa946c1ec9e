# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What the certificate asks for: credit tasks, equipment, balance, documents."""

from demo.tables import rows

EMPTY_ARM_UNIT = "mm"


def add_credit(records, pictures_of):
    """`pictures_of` gives the pictures of parts that show the builder at work."""
    for n, cells in enumerate(rows("credit.txt", 8)):
        section, task, kit, paid, assembled, made, parts, _ = cells
        tenths = [int(t) for t in (kit, paid, assembled, made)]
        codes = parts.split()
        records.add(
            "credit_task", n, section=section, task=task,
            not_applicable=True if not any(tenths) else None, kit_tenths=tenths[0] or None,
            commercial_tenths=tenths[1] or None, assembly_tenths=tenths[2] or None,
            fabrication_tenths=tenths[3] or None, component_ids=records.ids("component", codes),
            media_ids=pictures_of(codes))


def add_equipment(records):
    for n, cells in enumerate(rows("equipment.txt", 8)):
        part, name, maker, part_number, serial, weight, arm, fitted = cells
        records.add(
            "equipment", n, component_id=records.optional("component", part), name=name,
            maker=maker, part_number=part_number, serial_number=serial,
            weight=float(weight) if weight else None, weight_unit="kg" if weight else None,
            arm=float(arm) if arm else None, arm_unit=EMPTY_ARM_UNIT if arm else None,
            fitted_on=fitted)


def add_weighing(records):
    """The designer's estimate, until the aeroplane stands on its wheels."""
    records.add(
        "weighing", 0, weighed_on="2026-10-17", place="Designer's letter of 12 October 2026",
        weight_unit="kg", arm_unit=EMPTY_ARM_UNIT, datum="Front face of the propeller flange",
        fuel_state="none, unusable fuel added", oil_state="full",
        scale_readings=[{"point": "Whole aeroplane, estimated", "reading": 340.5, "tare": 0.0,
                         "arm": 1751.6}],
        corrections=[{"what": "Unusable fuel", "weight": 1.5, "arm": 1850.0}],
        note="No scale has seen it yet: the estimate stands in for the weighing.")


def add_loading(records):
    """The designer's limits, and two loadings within them."""
    cases = {}
    for case, what, weight, arm in rows("loading.txt", 4):
        cases.setdefault(case, []).append((what, float(weight), float(arm)))
    points = cases.pop("Limits")
    records.add(
        "envelope", 0, points=[{"weight": w, "arm": a} for _, w, a in points], weight_unit="kg",
        arm_unit=EMPTY_ARM_UNIT, lemac=1420.0, mac=1350.0, source="Drawing M2-X4, revision B")
    for name, items in cases.items():
        records.add(
            "loading_case", name, name=name, weight_unit="kg", arm_unit=EMPTY_ARM_UNIT,
            items=[{"what": what, "weight": w, "arm": a} for what, w, a in items])


def add_documents(records, papers):
    for key, number, asked, received, name, model, serial, marks, paper, note in rows(
            "certificate.txt", 10):
        media = papers.id_of(paper)
        records.add(
            "certificate_document", key, key=key, number=number, asked_on=asked,
            received_on=received, name_as_written=name, model_as_written=model,
            serial_as_written=serial, registration_as_written=marks,
            media_ids=[media] if media else None, note=note)
