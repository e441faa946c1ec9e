# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Fasteners, measurements, tools, packing lists, materials and expenses."""

import random

from demo.tables import changes, number, rows

# Tension and shear nuts on dry, cadmium-plated threads, in-lb: AC 43.13-1B (1998), Table 7-1.
TORQUES = {
    ("8-32", "T"): (12, 15), ("8-32", "S"): (7, 9),
    ("10-32", "T"): (20, 25), ("10-32", "S"): (12, 15),
    ("1/4-28", "T"): (50, 70), ("1/4-28", "S"): (30, 40),
    ("5/16-24", "T"): (100, 140), ("5/16-24", "S"): (60, 85),
    ("3/8-24", "T"): (160, 190), ("3/8-24", "S"): (95, 110),
    ("1/2-20", "T"): (480, 690), ("1/2-20", "S"): (290, 410),
}
LOCKED_BY_HAND = ("split_pin", "safety_wire", "jam_nut", "lock_tab")


class Stores:
    """Adds what is counted, measured, torqued, mixed and paid for."""

    def __init__(self, records, log, papers):
        self._records = records
        self._log = log
        self._papers = papers
        self._random = random.Random(1903)

    def add(self):
        for cells in rows("tools.txt", 5):
            self._add_tool(*cells)
        for n, cells in enumerate(rows("fasteners.txt", 8)):
            self._add_fastener(n, *cells)
        for n, cells in enumerate(rows("measurements.txt", 8)):
            self._add_measurement(n, *cells)
        for cells in rows("materials.txt", 9):
            self._add_lot(*cells)
        for n, cells in enumerate(rows("material-uses.txt", 8)):
            self._add_use(n, *cells)
        for n, cells in enumerate(rows("packing.txt", 12)):
            self._add_part_line(n, *cells)
        for n, cells in enumerate(rows("expenses.txt", 6)):
            self._add_expense(n, *cells)

    def _part_of(self, step):
        return self._records.row("step", step)["component_id"]

    def _add_tool(self, key, name, serial, calibrations, note):
        done = [pair.split(" > ") for pair in calibrations.split(", ") if pair != "-"]
        self._records.add(
            "tool", key, name=name, serial_number=serial, needs_calibration=bool(done) or None,
            calibrations=[self._calibration(key, *pair) for pair in done], note=note)

    def _calibration(self, tool, calibrated_on, due_on):
        row = {"calibrated_on": calibrated_on, "due_on": due_on}
        card = self._papers.card_of(tool, calibrated_on)
        return {**row, "certificate_id": card} if card else row

    def _add_fastener(self, n, step, place, hardware, thread, quantity, drag, locking, changed):
        said = changes(changed)
        limits = self._limits(thread)
        thread = None if thread == "-" else thread.split()[0]
        dates = self._fastener_dates(step, said, limits, locking)
        value = None
        if dates.get("torqued_on"):
            value = self._torque(said.get("value"), limits, number(drag) or 0)
        accepted = self._accepted(said)
        self._records.add(
            "fastener", n, component_id=self._part_of(step), step_id=self._records.id("step", step),
            place=place, hardware=hardware, thread=thread, quantity=int(quantity),
            torque_min=limits and limits[0], torque_max=limits and limits[1],
            torque_drag=number(drag) if limits else None,
            fitted_on=dates.get("fitted_on"), torqued_on=dates.get("torqued_on"),
            torque_value=value,
            tool_id=self._records.id("tool", said.get("tool", "T1")) if limits else None,
            marked_on=dates.get("marked_on"), locking=locking, locked_on=dates.get("locked_on"),
            removed_on=said.get("removed"), removed_why=said.get("why"), **accepted)

    def _limits(self, thread):
        if thread == "-":
            return None
        size, nut = thread.split()
        if nut in ("T", "S"):
            return TORQUES[size, nut]
        least, most = nut.split("-")
        return int(least), int(most)

    def _fastener_dates(self, step, said, limits, locking):
        """A fastener is fitted, torqued, marked and locked with its step unless it says else."""
        def moment(name, usual):
            return None if said.get(name) == "-" else said.get(name) or usual

        fitted = moment("fitted", self._log.done.get(step))
        torqued = moment("torqued", fitted) if fitted and limits else None
        marked = moment("marked", torqued) if torqued else None
        by_hand = fitted and locking in LOCKED_BY_HAND
        return {"fitted_on": fitted, "torqued_on": torqued, "marked_on": marked,
                "locked_on": moment("locked", torqued or fitted) if by_hand else None}

    def _torque(self, said, limits, drag):
        if said:
            return number(said)
        least, most = limits
        return drag + least + round((most - least) * self._random.uniform(0.3, 0.8))

    def _accepted(self, said):
        if "accepted" not in said:
            return {}
        who, moment = said["accepted"].split()
        return {"accepted_on": moment, "accepted_by": self._records.id("person", who),
                "accepted_basis": said["basis"]}

    def _add_measurement(self, n, step, what, unit, least, most, value, tool, changed):
        said = changes(changed)
        measured = said.get("on") or self._log.done.get(step) if value else None
        self._records.add(
            "measurement", n, component_id=self._part_of(step),
            step_id=self._records.id("step", step), what=what, unit=unit, minimum=number(least),
            maximum=number(most), value=number(value), measured_on=measured,
            tool_id=self._records.optional("tool", tool), **self._accepted(said))

    def _add_lot(self, key, name, specification, lot, supplier, cures, opened, expires, storage):
        self._records.add(
            "material_lot", key, name=name, specification=specification, lot_number=lot,
            supplier=supplier, certificate_id=self._papers.certificate_of(key),
            cures=True if cures == "yes" else None, opened_on=opened, expires_on=expires,
            storage=storage)

    def _add_use(self, n, step, lots, mix, temperature, humidity, hours, sample, note):
        warm = [float(t) for t in temperature.split("-")] if temperature else [None, None]
        result, _, seen_on = sample.partition(" ")
        self._records.add(
            "material_use", n, lot_ids=self._records.ids("material_lot", lots.split()),
            component_id=self._part_of(step), step_id=self._records.id("step", step),
            used_on=self._log.done[step], mix_ratio=mix, temperature_min=warm[0],
            temperature_max=warm[1], humidity=number(humidity),
            cure_minutes=int(hours) * 60 if hours else None, sample=result, sample_on=seen_on,
            note=note)

    def _add_part_line(self, n, shipment, part, part_number, name, wanted, came, damaged, came_on,
                       ordered, expected, price, note):
        self._records.add(
            "part_line", n, component_id=self._records.optional("component", part),
            shipment=shipment, part_number=part_number, name=name, quantity=int(wanted),
            received_quantity=number(came) or None, received_on=came_on,
            damaged_quantity=number(damaged) or None, ordered_on=ordered, expected_on=expected,
            unit_price=number(price), currency="CAD", note=note)

    def _add_expense(self, n, spent_on, what, supplier, amount, category, paper):
        self._records.add(
            "expense", n, spent_on=spent_on, what=what, supplier=supplier, amount=int(amount),
            currency="CAD", category=category, media_id=self._papers.id_of(paper))
