#!/usr/bin/python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Holds the forecast against SciPy and NumPy.

    check_forecast.py QUANTILES LASTRIVET_CLI

1. `normalQuantile`, `gammaQuantile` and `gammaShare` against scipy.special.ndtri, gammaincinv and
   gammainc.
2. The hours of one big step after a long log, in closed form: Student's t of scipy.stats.t (the
   posterior predictive of a normal-inverse-gamma model; Gelman et al., Bayesian Data Analysis,
   section 3.3).
3. The hours, the finish and the shares of whole projects, drawn a second time with the generators
   of NumPy and SciPy from the rules alone.
"""

import datetime
import json
import math
import random
import subprocess
import sys
import tempfile
from pathlib import Path

import numpy
from scipy import special, stats

AS_OF = datetime.date(2026, 6, 3)  # a Wednesday
M0, K0, A0, B0 = 0.2, 2.0, 2.0, 0.25
POINTS = {"p10": 0.1, "p50": 0.5, "p80": 0.8, "p90": 0.9}


def check_functions(program):
    shares = [1e-12, 1e-6, 0.001, 0.024, 0.1, 0.3, 0.5, 0.7, 0.9, 0.975, 0.999, 1 - 1e-9]
    shapes = [0.05, 0.5, 1, 2, 2.5, 8, 30, 171.3, 1000, 20000]
    asked = [("normal", p) for p in shares]
    asked += [("gamma", a, p) for a in shapes for p in shares]
    asked += [("share", a, a * x) for a in shapes for x in (0.01, 0.3, 0.9, 1, 1.1, 2, 9)]
    text = "\n".join(" ".join(map(repr, row)).replace("'", "") for row in asked)
    done = subprocess.run([program], input=text, capture_output=True, text=True, check=True)
    told = [float(line) for line in done.stdout.split()]
    assert len(told) == len(asked), (len(told), len(asked))
    known = {"normal": special.ndtri, "gamma": special.gammaincinv, "share": special.gammainc}
    for row, value in zip(asked, told):
        right = known[row[0]](*row[1:])
        # The inverse of a share next to 1 moves with its last binary digit.
        tolerance = 1e-6 if row[-1] > 0.9999 and row[0] != "share" else 2e-10
        assert math.isclose(value, right, rel_tol=tolerance, abs_tol=1e-14), (row, value, right)
    print(f"{len(asked)} values of three functions agree with SciPy")


class Builder:
    """A document with a log, and what the forecast may know of it."""

    def __init__(self, seed, done, left, weeks=40):
        self.random = random.Random(seed)
        self.steps, self.sessions = [], []
        self.parts = [{"id": i, "name": f"Part {i}"} for i in (1, 2, 3)]
        self.ratios, self.minutes = [], {"rework": 0, "other": 0}
        self.weeks = [0.0] * 26
        self.left = {1: [], 2: [], 3: []}
        for _ in range(done):
            self.finish(estimate=self.random.choice((60, 120, 300, 480)), weeks=weeks)
        for _ in range(left):
            part = self.random.choice((1, 1, 2, 3))
            self.add(part, self.random.choice((30, 90, 240, 900)))

    def add(self, part, estimate):
        self.left[part].append(estimate)
        self.steps.append({"id": len(self.steps) + 1, "component_id": part, "title": "Step",
                           "estimate_minutes": estimate})

    def finish(self, estimate, weeks, minutes=None):
        day = AS_OF - datetime.timedelta(days=self.random.randrange(3, 7 * weeks))
        took = minutes or max(1, round(estimate * math.exp(self.random.gauss(0.35, 0.4))))
        step = {"id": len(self.steps) + 1, "component_id": 1, "title": "Step",
                "estimate_minutes": estimate, "done_on": day.isoformat()}
        self.steps.append(step)
        self.work(day, took, "fabrication", step["id"])
        self.ratios.append(math.log(took / estimate))

    def work(self, day, minutes, kind, step=None):
        session = {"id": len(self.sessions) + 1, "began": day.isoformat(), "minutes": minutes,
                   "component_id": 1, "kind": kind}
        if step:
            session["step_id"] = step
        self.sessions.append(session)
        self.minutes["rework" if kind == "rework" else "other"] += minutes
        monday = AS_OF - datetime.timedelta(days=AS_OF.isoweekday() - 1)
        back = (monday - day + datetime.timedelta(days=day.isoweekday() - 1)).days // 7
        if 1 <= back <= 26:
            self.weeks[26 - back] += minutes

    def document(self):
        return {"format": "lastrivet-records", "version": 1, "hold_points_given": True,
                "project": {"name": "Drawn", "profile": "plain", "builder_id": 9},
                "people": [{"id": 9, "name": "Ada Holm", "roles": ["builder"]}],
                "components": self.parts, "steps": self.steps, "work_sessions": self.sessions}

    def posterior(self):
        n, mean = len(self.ratios), sum(self.ratios) / len(self.ratios)
        k = K0 + n
        squares = sum((x - mean) ** 2 for x in self.ratios)
        return ((K0 * M0 + n * mean) / k, k, A0 + n / 2,
                B0 + squares / 2 + K0 * n * (mean - M0) ** 2 / (2 * k))

    def rework(self):
        """Shape and rate of the share, in hours."""
        return 8 + self.minutes["rework"] / 60, 100 + self.minutes["other"] / 60


def told_of(program, builder):
    with tempfile.TemporaryDirectory(prefix="lastrivet-forecast-") as folder:
        file, project = Path(folder, "drawn.json"), Path(folder, "Drawn.lastrivet")
        file.write_text(json.dumps(builder.document()), encoding="utf-8")
        subprocess.run([program, "import", project, file, "--create"], check=True,
                       capture_output=True)
        done = subprocess.run([program, "forecast", project, "--as-of", AS_OF.isoformat(),
                               "--json"], check=True, capture_output=True)
        return json.loads(done.stdout)


def check_closed_form(program):
    builder = Builder(seed=3, done=60, left=0)
    builder.work(AS_OF - datetime.timedelta(days=300), 9000, "assembly")
    builder.work(AS_OF - datetime.timedelta(days=301), 9500, "assembly")
    builder.add(2, 600_000)
    mean, k, shape, scale = builder.posterior()
    spread = math.sqrt(scale * (k + 1) / (shape * k))
    again = 1 + builder.rework()[0] / builder.rework()[1]
    told = told_of(program, builder)["minutes_to_go"]
    for name, share in POINTS.items():
        right = 600_000 * again * math.exp(mean + spread * stats.t.ppf(share, 2 * shape))
        assert math.isclose(told[name], right, rel_tol=0.03), (name, told[name], right)
    print("one step after sixty: as Student's t says")


def drawn(builder, draws=200_000):
    """Hours of each part, and weeks, of so many futures."""
    random_numbers = numpy.random.default_rng(11)
    mean, k, shape, scale = builder.posterior()
    variance = numpy.minimum(4, stats.invgamma.rvs(shape, scale=scale, size=draws,
                                                   random_state=random_numbers))
    slow = random_numbers.normal(mean, numpy.sqrt(variance / k))
    again = 1 + random_numbers.gamma(builder.rework()[0], 1 / builder.rework()[1], size=draws)
    parts = []
    for estimates in builder.left.values():
        minutes = numpy.zeros(draws)
        for estimate in estimates:
            minutes += estimate * numpy.exp(random_numbers.normal(slow, numpy.sqrt(variance)))
        parts.append(minutes * again)
    whole = sum(parts)
    rest, passed = whole.copy(), numpy.zeros(draws)
    weeks = numpy.array(builder.weeks)
    while (rest > 0).any():
        first = random_numbers.integers(0, 26, size=draws)
        for i in range(4):
            week = weeks[(first + i) % 26]  # after the newest comes the oldest
            is_open = rest > 0
            is_last = is_open & (week >= rest)
            passed[is_last] += rest[is_last] / week[is_last]
            passed[is_open & ~is_last] += 1
            rest = numpy.where(is_open, numpy.where(is_last, 0, rest - week), rest)
    return parts, whole, passed


def check_drawn(program, seed, left):
    builder = Builder(seed, done=25, left=left)
    for _ in range(5):
        builder.work(AS_OF - datetime.timedelta(days=builder.random.randrange(20, 200)), 90,
                     "rework")
    told = told_of(program, builder)
    parts, whole, weeks = drawn(builder)
    for name, share in POINTS.items():
        right = numpy.quantile(whole, share)
        assert math.isclose(told["minutes_to_go"][name], right, rel_tol=0.025), (seed, name)
        day = AS_OF + datetime.timedelta(days=math.ceil(7 * numpy.quantile(weeks, share)))
        off = abs((datetime.date.fromisoformat(told["finish"][name]) - day).days)
        assert off <= max(5, 0.03 * (day - AS_OF).days), (seed, name, told["finish"], day)
    assert len(told["assemblies"]) == sum(1 for row in builder.left.values() if row)
    for assembly in told["assemblies"]:
        minutes = parts[assembly["component"] - 1]
        right = numpy.cov(minutes, whole)[0, 1] / numpy.var(whole)
        assert abs(assembly["share_of_spread"] - right) < 0.05, (seed, assembly, right)
        assert math.isclose(assembly["minutes_to_go"]["p50"], numpy.quantile(minutes, 0.5),
                            rel_tol=0.025), (seed, assembly)
    print(f"project {seed}: hours, days and shares agree with a second drawing")


def main():
    quantiles, program = sys.argv[1:]
    check_functions(quantiles)
    check_closed_form(program)
    for seed, left in ((1, 12), (2, 60), (4, 300)):
        check_drawn(program, seed, left)


if __name__ == "__main__":
    main()
