# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A project read with nothing but sqlite3, sha256sum and a text viewer, by the steps that its own
folder and DEVELOPERS.md give. What they find is compared with what the program says.

The project is made of the demo in the folder LASTRIVET_DEMO, else a small one.
"""

import hashlib
import os
import re
import shutil
import subprocess
from pathlib import Path

from documents import bench
from terminal import TerminalTest

DEVELOPERS = Path(__file__).resolve().parents[2] / "DEVELOPERS.md"
# Programs that the steps may use; nothing of ours is among them.
ALLOWED = ("sqlite3", "sha256sum")


def commands(text):
    """The commands in a text: indented, each beginning with sqlite3, lines that go on after it."""
    found = []
    for line in text.splitlines():
        if re.match(r" {2,}sqlite3 ", line):
            found.append(line.strip())
        elif found and found[-1].count('"') % 2 == 1:
            found[-1] += "\n" + line.strip()
    return found


class WithoutProgram(TerminalTest):
    def setUp(self):
        super().setUp()
        demo = os.environ.get("LASTRIVET_DEMO")
        if demo:
            self.ask("import", self.project, Path(demo) / "demo.json", "--create")
        else:
            self.make_project(self.small())

    def small(self):
        content = b"\xff\xd8\xff\xe0 not much of a photograph"
        self.write("photos/2026/rib.jpg", content)
        rib = {"id": 70, "kind": "photo", "file": "photos/2026/rib.jpg", "bytes": len(content),
               "sha256": hashlib.sha256(content).hexdigest(), "imported_on": "2026-01-01"}
        document = bench()
        inner = next(part for part in document["components"] if part["code"] == "LW-R1")
        squawk = {**document["squawks"][0], "id": 980, "number": "980", "component_id": inner["id"]}
        document["squawks"].append(squawk)
        document["media"] = [
            {**rib, "links": [{"subject": "squawk", "id": 980}]},
            {**rib, "id": 71, "links": [{"subject": "component", "id": inner["id"]}],
             "file": "photos/2026/other.jpg", "sha256": None, "bytes": None},
            {**rib, "id": 72, "file": "photos/2026/elsewhere.jpg", "sha256": None, "bytes": None}]
        for name in ("other", "elsewhere"):
            self.write(f"photos/2026/{name}.jpg", b"x")
        return document

    def run_step(self, step):
        """A step in the project's folder, with no program but those that the texts speak of."""
        tools = self.folder / "tools"
        tools.mkdir(exist_ok=True)
        for name in ALLOWED:
            link = tools / name
            if not link.exists():
                link.symlink_to(shutil.which(name))
        done = subprocess.run(["/bin/sh", "-c", step], cwd=self.project, capture_output=True,
                              text=True, env={"PATH": str(tools), "LC_ALL": "C.UTF-8"}, check=False)
        self.assertEqual((done.returncode, done.stderr), (0, ""), step)
        return done.stdout

    def texts(self):
        page = DEVELOPERS.read_text(encoding="utf-8")
        section = re.search(r"^## If this program is gone$(.*?)^## ", page, re.M | re.S).group(1)
        return {"DEVELOPERS.md": section,
                "READ-ME-FIRST.txt": (self.project / "READ-ME-FIRST.txt").read_text("utf-8")}

    def steps_with(self, words):
        """The step that holds these words, from each of the texts."""
        for name, text in self.texts().items():
            step, = (step for step in commands(text) if words in step)
            yield name, step

    def parts(self):
        parts = self.database("SELECT code FROM component WHERE code IS NOT NULL"
                              " AND withdrawn_on IS NULL ORDER BY id")
        return [row["code"] for row in parts]

    def test_every_photograph_of_a_part_and_of_what_is_in_it_is_found(self):
        found = 0
        for name, step in self.steps_with("photos-of-part.sql"):
            self.assertIn("'LW'", step)
            for part in self.parts()[::6]:
                with self.subTest(text=name, part=part):
                    files = self.run_step(step.replace("'LW'", f"'{part}'")).splitlines()
                    photos = self.ask("photos", self.project, "--component", part, "--json")
                    said = [photo["file"] for photo in photos.json()["photos"]]
                    self.assertEqual(files, sorted(set(said)))
                    for file in files:
                        self.assertTrue((self.project / file).is_file(), file)
                    found += len(files)
        self.assertGreater(found, 3)

    def test_the_hours_of_a_year_are_those_that_the_program_says(self):
        months = self.ask("hours", self.project, "--json").json()["months"]
        years = {}
        for month in months:
            years[month["month"][:4]] = years.get(month["month"][:4], 0) + month["minutes"]
        self.assertTrue(years)
        for name, step in self.steps_with("sum(minutes)"):
            self.assertIn("'2025%'", step)
            for year, minutes in years.items():
                with self.subTest(text=name, year=year):
                    hours = float(self.run_step(step.replace("2025", year)))
                    self.assertAlmostEqual(hours * 60, minutes, places=6)

    def test_a_file_that_changed_is_named_and_no_other(self):
        for name, step in self.steps_with("sha256sum"):
            with self.subTest(text=name):
                self.assertEqual(self.run_step(step), "")
        row = self.database("SELECT file FROM media WHERE sha256 IS NOT NULL"
                            " AND withdrawn_on IS NULL ORDER BY id LIMIT 1")[0]
        file = self.project / row["file"]
        file.write_bytes(file.read_bytes() + b" ")
        for name, step in self.steps_with("sha256sum"):
            done = subprocess.run(["/bin/sh", "-c", step], cwd=self.project, capture_output=True,
                                  text=True, env={**os.environ, "LC_ALL": "C"}, check=False)
            self.assertEqual(done.stdout, f"{row['file']}: FAILED\n", name)

    def test_all_other_steps_answer(self):
        for text in self.texts().values():
            for step in commands(text):
                if "sha256sum" not in step:
                    self.assertNotEqual(self.run_step(step).strip(), "", step)

    def test_a_folder_without_the_program_explains_itself(self):
        page = (self.project / "READ-ME-FIRST.txt").read_text("utf-8")
        for entry in self.project.iterdir():
            if entry.name not in ("READ-ME-FIRST.txt", "records.lock", "cache"):
                self.assertIn(entry.name, page)
        self.assertLessEqual(len(page.splitlines()), 30)
