# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The workshop tables and sums from a terminal."""

import csv
import json
import random
from pathlib import Path

from terminal import TerminalTest

TABLES = Path(__file__).resolve().parents[2] / "resources" / "tables"


class Workshop(TerminalTest):
    def test_torque_with_the_drag_of_the_nut(self):
        # AC 43.13-1B table 7-1: 1/4-28, tension nut 50 to 70, never more than 100.
        answer = self.ask("workshop", "torque", "--thread", "1/4-28", "--nut", "tension",
                          "--drag", "5", "--json").json()
        source = answer.pop("source")
        self.assertIn("AC 43.13-1B", source)
        self.assertEqual(answer, {"thread": "1/4-28", "nut": "tension", "minimum": 55,
                                  "maximum": 75, "allowed_maximum": 105, "unit": "in-lb",
                                  "drag_added": 5, "verified": "read in two places"})

    def test_text_says_source_and_caution(self):
        said = self.ask("workshop", "torque", "--thread", "10-32", "--nut", "shear").out
        self.assertIn("12 to 15 in-lb", said)
        self.assertIn("Source: AC 43.13-1B", said)
        self.assertIn("maker's drawings and manuals come first", said)

    def test_wrench_both_ways(self):
        # TM 1-1500-204-23-9 para 8 and TM 9-254 fig. 45.
        answer = self.ask("workshop", "wrench", "--desired", "300", "--lever", "10",
                          "--extension", "4", "--json").json()
        self.assertAlmostEqual(answer["setting"], 300 * 10 / 14)
        self.assertIs(answer["unit_free"], True)
        answer = self.ask("workshop", "wrench", "--setting", "60", "--lever", "12",
                          "--extension", "2", "--json").json()
        self.assertAlmostEqual(answer["applied"], 70)
        answer = self.ask("workshop", "wrench", "--desired", "100", "--lever", "10",
                          "--extension", "-2", "--json").json()
        self.assertAlmostEqual(answer["setting"], 125)

    def test_rivet(self):
        answer = self.ask("workshop", "rivet", "--diameter", "1/8", "--grip", "0.19",
                          "--json").json()
        self.assertEqual((answer["length"], answer["length_code"]), (0.4375, 7))
        self.assertEqual(answer["drill"], "#30")
        bases = {head["basis"]: head for head in answer["shop_head"]}
        self.assertEqual(bases["mil_minimum"]["diameter_min"], 0.163)
        self.assertTrue(all(row["source"] and row["verified"] for key in
                            ("shop_head", "edge_distance", "pitch") for row in answer[key]))

    def test_balance_equals_sums_made_here(self):
        numbers = random.Random(7)
        for _ in range(20):
            items = [{"name": f"item {i}", "weight": numbers.uniform(0.1, 500),
                      "arm": numbers.uniform(-100, 200)} for i in range(numbers.randint(1, 12))]
            path = self.folder / "items.json"
            path.write_text(json.dumps({"weight_unit": "kg", "arm_unit": "mm", "items": items,
                                        "mac": {"lemac": 10, "length": 50}}), encoding="utf-8")
            answer = self.ask("workshop", "balance", path, "--json").json()
            weight = sum(item["weight"] for item in items)
            moment = sum(item["weight"] * item["arm"] for item in items)
            self.assertAlmostEqual(answer["weight"], weight, places=9)
            self.assertAlmostEqual(answer["moment"], moment, places=6)
            self.assertAlmostEqual(answer["cg"], moment / weight, places=9)
            self.assertAlmostEqual(answer["percent_mac"], (moment / weight - 10) * 2, places=9)

    def test_published_misprints_are_not_repeated(self):
        # AC 43.13-1B fig. 10-13 prints +18.6; its own sums are 38,466 over 2,100. Fig. 10-14 prints
        # the divisor 20366 for 2036.
        empty = [("empty", 1169, 10.6), ("oil", 17, -49), ("pilot", 170, 16)]
        for items, weight, cg in (
                (empty + [("front", 170, 16), ("rear", 340, 48), ("fuel", 234, 22)], 2100, 18.32),
                (empty + [("rear", 170, 48), ("front", 170, 16), ("fuel", 240, 22),
                          ("baggage", 100, 75.5)], 2036, 18.66)):
            path = self.folder / "items.json"
            path.write_text(json.dumps({
                "weight_unit": "lb", "arm_unit": "in",
                "items": [dict(zip(("name", "weight", "arm"), item)) for item in items]}),
                encoding="utf-8")
            answer = self.ask("workshop", "balance", path, "--json").json()
            self.assertEqual(answer["weight"], weight)
            self.assertAlmostEqual(answer["cg"], cg, places=2)
            self.assertIsNone(answer["percent_mac"])

    def test_voltage_drop(self):
        # AC 43.13-1B CHG 1 tables 11-7 and 11-8; their 3.60 and .366 do not fit their own numbers.
        for gauge, run, drop in (("6", 107, 0.9416), ("4", 90, 0.504), ("12", 88, 3.5552),
                                 ("14", 100, 6.12), ("10", 39, 0.9828), ("10", 19.5, 0.4914),
                                 ("10", 156, 3.9312), ("10", 273, 6.8796)):
            answer = self.ask("workshop", "wire", "--gauge", gauge, "--run", str(run),
                              "--amps", "20", "--json").json()
            self.assertAlmostEqual(answer["drop"], drop, places=9)
            self.assertIn("Table 11-9", answer["source"])

    def test_setback_of_a_bend(self):
        # AC 43.13-1B p. 4-14: .064 sheet, radius .25.
        for angle, setback in (("45", 0.130), ("135", 0.758)):
            answer = self.ask("workshop", "bend", "--angle", angle, "--radius", ".25",
                              "--sheet", ".064", "--json").json()
            self.assertAlmostEqual(answer["setback"], setback, places=3)

    def test_tables_are_given_as_published(self):
        for file in sorted(TABLES.glob("*.csv")):
            with open(file, encoding="utf-8", newline="") as table:
                published = list(csv.DictReader(table))
            self.assertTrue(published, file.name)
            told = self.ask("workshop", "table", file.stem, "--json").json()
            self.assertEqual([{key: cell or "" for key, cell in row.items()} for row in told],
                             published, file.name)
            self.assertTrue(all(row["source"] and row["verified"] for row in told), file.name)
        said = self.ask("workshop", "table", "crimp_pull").out
        self.assertIn("(from memory)", said)
        self.assertIn("maker's drawings and manuals come first", said)

    def test_units_are_never_mixed_in_silence(self):
        path = self.folder / "items.json"
        item = {"name": "empty", "weight": 400, "arm": 1000}
        for document, says in (
                ({"weight_unit": "kg", "arm_unit": "mm", "items": [{**item, "weight_unit": "lb"}]},
                 "all items share"),
                ({"weight_unit": "stone", "arm_unit": "mm", "items": [item]}, "/weight_unit"),
                ({"arm_unit": "mm", "items": [item]}, "/weight_unit"),
                ({"weight_unit": "kg", "arm_unit": "mm", "items": [{**item, "weight": "900 lb"}]},
                 "/items/0/weight")):
            path.write_text(json.dumps(document), encoding="utf-8")
            self.refused(3, "workshop", "balance", path, says=says)
        self.refused(2, "workshop", "torque", "--thread", "1/4-28", "--nut", "shear", "--drag",
                     "5Nm", says="--drag")
        self.refused(2, "workshop", "rivet", "--diameter", "3.2mm", "--grip", "0.1",
                     says="--diameter")

    def test_wrong_input_gets_one_line(self):
        for arguments, says in (
                (("torque", "--thread", "1/4-27", "--nut", "shear"), "no thread 1/4-27"),
                (("torque", "--thread", "1/4-28", "--nut", "castle"), "tension, shear"),
                (("torque", "--thread", "1/4-28", "--nut", "shear", "--drag", "41"), "more than"),
                (("wrench", "--lever", "10", "--extension", "4"), "--desired"),
                (("wrench", "--desired", "5", "--lever", "10", "--extension=-10"), "grip"),
                (("wire", "--gauge", "7", "--run", "5", "--amps", "2"), "no wire size 7"),
                (("wire", "--gauge", "12", "--run", "0", "--amps", "2"), "longer than nothing"),
                (("bend", "--angle", "180", "--radius", ".1", "--sheet", ".04"), "180 degrees"),
                (("bend", "--angle", "180", "--radius", ".1", "--sheet", ".04", "--json"),
                 "180 degrees"),
                (("wrench", "--desired", "1e300", "--lever", "1e300", "--extension", "1",
                  "--json"), "too large"),
                (("wire", "--gauge", "20", "--run", "1e300", "--amps", "1e300", "--json"),
                 "too large"),
                (("table", "torque_metric"), "no table"),
                (("rivet", "--diameter", "1/7", "--grip", "0.1"), "no solid rivet"),
                (("rivet", "--diameter", "eighth", "--grip", "0.1"), "--diameter"),
                (("rivet", "--diameter", "1/8", "--grip=-0.1"), "--grip")):
            with self.subTest(arguments=arguments):
                self.refused(2, "workshop", *arguments, says=says)
        self.refused(3, "workshop", "balance", self.folder / "none.json", says="is not there")
        self.refused(3, "workshop", "balance", self.folder, says=f"{self.folder} is a folder")
        path = self.folder / "items.json"
        path.write_text('{"weight_unit": "lb", "arm_unit": "in", "items": []}', encoding="utf-8")
        self.refused(3, "workshop", "balance", path, says="nothing to weigh")
