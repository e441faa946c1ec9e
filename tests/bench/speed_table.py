#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Measures every line of the speed table beside its yardstick, in one run, and prints ratios.

    speed_table.py [BUILD] [--photos N] [--growth] [--only WORD]

BUILD is a build folder with the targets `bench`, `lastrivet-cli` and `lastrivet` (build/bench, made
here when it is missing). The load is that of ten builders' lifetimes, from a seed. Needs sqlite3,
vipsthumbnail (libvips-tools) and img2pdf of Debian; a line whose yardstick is not installed says so.
--growth measures the core's lines at ten times that load too, and prints how much longer they take.

Whole processes are run five times after one that is not counted; the median counts. Times belong to
this computer at this moment; the ratios are what is judged.
"""
import argparse
import json
import os
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

SOURCE = Path(__file__).resolve().parents[2]
QUERY = (SOURCE / "tests/bench/open_squawk.sql").read_text(encoding="utf-8")
ROUNDS = 5


class Table:
    """The lines as they come, and again at the end."""

    def __init__(self):
        self.rows = []

    def add(self, what, ours, theirs, goal, unit="ms"):
        """`goal` is the largest allowed ratio, or with `theirs` None the largest value."""
        value = ours if theirs is None else ours / theirs
        self.rows.append((what, ours, theirs, value, goal, unit))
        print(self.line(self.rows[-1]), flush=True)

    def skip(self, what, why):
        print(f"{what:<58} not measured: {why}", flush=True)
        self.rows.append((what, None, None, None, None, why))

    @staticmethod
    def line(row):
        what, ours, theirs, value, goal, unit = row
        if value is None:
            return f"{what:<58} not measured: {unit}"
        beside = "" if theirs is None else f"{theirs:10.1f}"
        shown = "" if theirs is None else f"{value:8.2f}"
        verdict = "" if value <= goal else "  missed"
        return f"{what:<58}{ours:10.1f}{beside:>10}{shown:>8}  goal {goal:g} {unit if theirs is None else ''}{verdict}"

    def print(self):
        print(f"\n{'':<58}{'ours':>10}{'theirs':>10}{'ratio':>8}")
        for row in self.rows:
            print(self.line(row))


def run(command, **options):
    return subprocess.run([str(part) for part in command], check=True, capture_output=True, text=True,
                          env={**os.environ, "QT_QPA_PLATFORM": "offscreen"}, **options).stdout


def milliseconds(command, rounds=ROUNDS, **options):
    run(command, **options)
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        run(command, **options)
        times.append((time.perf_counter() - start) * 1000)
    return statistics.median(times)


def in_process(table, build, folder, factor):
    """The lines that a program measures inside itself; answers their times by name."""
    times = {}
    for line in run([build / "tests/bench/records_bench", factor, folder]).splitlines():
        found = re.match(r"(.*?)\s+([\d.]+) ms\s+([\d.]+) ms\s+ratio\s+(\S+)\s+goal (\S+)", line)
        if not found:
            continue
        what, ours, theirs, _, goal = found.groups()
        times[what] = float(ours)
        if goal != "–":
            table.add(what, float(ours), float(theirs), float(goal))
    return times


def whole_processes(table, build, project):
    cli = build / "app/lastrivet-cli"
    database = project / "records.db"
    query = milliseconds(["sqlite3", database], input=QUERY + ";")
    table.add("ready in the terminal : the SQL query in sqlite3",
              milliseconds([cli, "ready", project, "--as-of", "2026-11-25"]), query, 3.0)


def verifying(table, build, project):
    """On a project with its photographs: without them nothing but the database is looked at."""
    sums = "find photos -type f -print0 | xargs -0 -r sha256sum > /dev/null"
    plain = milliseconds(["sh", "-c", f"sqlite3 records.db 'PRAGMA integrity_check' && {sums}"],
                         rounds=3, cwd=project)
    table.add("verify : integrity_check and sha256sum",
              milliseconds([build / "app/lastrivet-cli", "verify", project], rounds=3), plain, 1.5)


def month_of_two(table, build, project, folder):
    """Fifty entries on each side, then a merge."""
    cli = build / "app/lastrivet-cli"
    other = folder / "Other.lastrivet"
    shutil.copytree(project, other)
    code = run(["sqlite3", project / "records.db",
                "SELECT code FROM component WHERE code IS NOT NULL AND withdrawn_on IS NULL LIMIT 1"]).strip()
    for place in (project, other):
        for day in range(25):
            run([cli, "log", place, "--component", code, "--minutes", "45", "--note", f"Ribs, day {day}"])
    start = time.perf_counter()
    run(["sh", "-c", f"'{cli}' merge '{project}' '{other}' > /dev/null; test $? -lt 2"])
    table.add("merge of a month of two copies, whole process", (time.perf_counter() - start) * 1000, None, 2000)


def memory_of(command):
    """Megabytes that belong to the process alone, when it has painted and at its end."""
    said = re.search(r"memory (\d+) MB painted, (\d+) MB idle", run(command))
    return float(said.group(1)), float(said.group(2))


def starting(table, build, project):
    program = build / "tests/bench/start_bench"
    bare = milliseconds([program])
    ours = milliseconds([program, project])
    table.add("start, open, Today painted, beyond a bare window", ours - bare, None, 150)
    painted, idle = memory_of([program, project, "3000"])
    bare_painted, bare_idle = memory_of([program])
    table.add("memory painted, beyond a bare window", painted - bare_painted, None, 120, "MB")
    table.add("memory after three seconds idle, beyond it", idle - bare_idle, None, 120, "MB")


def photographs(table, build, folder, count):
    if not shutil.which("vipsthumbnail"):
        table.skip("intake and small copies of photographs", "vipsthumbnail is not installed")
        return
    printed = run([build / "tests/bench/evidence_bench", folder / "photos", count, 1])
    ours = dict(re.findall(r"(taking in|both copies): ([\d.]+) s", printed))
    theirs = dict(re.findall(r"(cp \+ sha256sum \+ sync|vipsthumbnail twice): ([\d.]+) s", printed))
    table.add(f"taking {count} photographs in : cp, sha256sum, sync",
              float(ours["taking in"]) * 1000, float(theirs["cp + sha256sum + sync"]) * 1000, 0.5)
    table.add("their copies of 256 and 1600 px : vipsthumbnail",
              float(ours["both copies"]) * 1000, float(theirs["vipsthumbnail twice"]) * 1000, 0.6)


def packet(table, build, folder):
    """The photo part of a packet: what it takes with the photographs beyond what it takes without."""
    project = folder / "photos/Bench.lastrivet"
    if not project.is_dir():
        table.skip("photo part of a packet", "needs the project of the photographs")
        return
    if not shutil.which("img2pdf"):
        table.skip("photo part of a packet", "img2pdf is not installed")
        return
    cli = build / "app/lastrivet-cli"
    media = json.loads(run([cli, "photos", project, "--json"]))["photos"]
    wing, box = 9_000_001, 9_000_002
    document = {
        "format": "lastrivet-records", "version": 1, "hold_points_given": True,
        "project": {"name": "Bench", "profile": "ca", "time_zone": "America/Toronto"},
        "components": [{"id": wing, "name": "Wing", "code": "W", "kind": "assembly"},
                       {"id": box + 1, "name": "Tail", "code": "T", "kind": "assembly"}],
        "closings": [{"id": box, "title": "Lower skin", "component_id": wing, "encloses": [wing]},
                     {"id": box + 2, "title": "Fin skin", "component_id": box + 1, "encloses": [box + 1]}],
    }
    exported = folder / "with.json"
    run([cli, "export", project, "--to", exported])
    whole = json.loads(exported.read_text(encoding="utf-8"))
    document["project"] = whole["project"]
    whole.update({key: whole[key] + document[key] for key in ("components", "closings")})
    for row in whole["media"]:
        row.setdefault("links", []).append({"subject": "component", "id": wing})
    exported.write_text(json.dumps(whole), encoding="utf-8")
    linked = folder / "Linked.lastrivet"
    for row in whole["media"]:
        target = folder / row["file"]
        target.parent.mkdir(parents=True, exist_ok=True)
        if not target.exists():
            os.link(project / row["file"], target)
    run([cli, "import", linked, exported, "--create"])
    shutil.copytree(project / "cache", linked / "cache", dirs_exist_ok=True)
    pdf = folder / "packet.pdf"
    with_photos = milliseconds([cli, "packet", linked, "--closing", box, "--to", pdf], rounds=3)
    size = pdf.stat().st_size
    without = milliseconds([cli, "packet", linked, "--closing", box + 2, "--to", folder / "none.pdf"], rounds=3)
    small = (folder / "none.pdf").stat().st_size
    pictures = sorted(linked.glob("cache/*/*-1600.jpg"))
    theirs = milliseconds(["img2pdf", *pictures, "-o", folder / "plain.pdf"], rounds=3)
    table.add(f"photo part of a packet, {len(media)} photographs : img2pdf", with_photos - without, theirs, 1.0)
    table.add("its size : the JPEG files", (size - small) / 1e6, sum(p.stat().st_size for p in pictures) / 1e6,
              1.01, "MB")


def pages(build, folder):
    """Absolute times of the window: what its own thread did, in ms."""
    print("\nThe window, at that load (clock, own work):")
    print(run([build / "tests/bench/pages_bench"]))
    print("The page of photographs, 20,000 of them:")
    print(run([build / "tests/bench/photos_bench", folder / "page", 20000, 20]))


def growth(table, build, folder, once):
    tenfold = in_process(Table(), build, folder, 10)
    for what, time_once in once.items():
        if what in tenfold and time_once > 0:
            table.add(f"ten times the records: {what}", tenfold[what], time_once, 11)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("build", nargs="?", type=Path, default=SOURCE / "build/bench")
    parser.add_argument("--photos", type=int, default=400)
    parser.add_argument("--growth", action="store_true")
    parser.add_argument("--only", default="")
    wish = parser.parse_args()
    if not (wish.build / "tests/bench/records_bench").exists():
        subprocess.run(["cmake", "--preset", "bench"], cwd=SOURCE, check=True)
        subprocess.run(["cmake", "--build", wish.build, "--target", "bench", "lastrivet-cli"], check=True)
    table = Table()
    with tempfile.TemporaryDirectory(prefix="lastrivet-bench-") as name:
        folder = Path(name)
        project = folder / "Load.lastrivet"
        once = in_process(table, wish.build, folder, 1)
        whole_processes(table, wish.build, project)
        starting(table, wish.build, project)
        month_of_two(table, wish.build, project, folder)
        if wish.photos:
            photographs(table, wish.build, folder, wish.photos)
            verifying(table, wish.build, folder / "photos/Bench.lastrivet")
            packet(table, wish.build, folder)
        if wish.growth:
            (folder / "ten").mkdir()
            growth(table, wish.build, folder / "ten", once)
        pages(wish.build, folder)
    table.print()
    return 0


if __name__ == "__main__":
    sys.exit(main())
