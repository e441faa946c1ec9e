#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the demo project: OUTDIR/demo.json, OUTDIR/photos, OUTDIR/documents.

Everything in it is invented: people, aeroplane, places, papers. The records come from the tables
in `tables/`, the pictures are drawn. The same tables give the same files.
"""

import argparse
import json
from pathlib import Path

from demo import certificate, work
from demo.closings import Closings
from demo.findings import Findings
from demo.pictures import Papers, Photographs
from demo.records import ARRAYS, Records
from demo.stores import Stores
from demo.tables import rows, stanzas


def project(records):
    """The one record without an id."""
    fields = {name: value for name, value in rows("project.txt", 2)}
    return {**fields, "maximum_weight": float(fields["maximum_weight"]),
            "builder_id": records.id("person", fields["builder_id"])}


def build(folder):
    """All records, and their files below `folder`."""
    records = Records()
    work.add_people(records)
    work.add_components(records)
    records.reserve("step", work.step_keys())
    records.reserve("closing", [key for key, _ in stanzas("closings.txt")])
    records.reserve("squawk", [number for number, _ in stanzas("squawks.txt")])
    papers = Papers(records)
    log = work.Log(records)
    closing_steps = work.add_steps(records, log)
    log.add_sessions()
    Findings(records, log).add()
    Closings(records, log, closing_steps, papers).add()
    Stores(records, log, papers).add()
    photographs = Photographs(records, log)
    photographs.add()
    certificate.add_credit(records, photographs.at_work_on)
    certificate.add_equipment(records)
    certificate.add_weighing(records)
    certificate.add_loading(records)
    certificate.add_documents(records, papers)
    papers.write(folder)
    photographs.write(folder)
    return {"format": "lastrivet-records", "version": 1, "hold_points_given": True,
            "project": project(records), **records.arrays()}


def clear(folder):
    """Removes the files of an earlier demo, and only those: the ones that its records name."""
    earlier = folder / "demo.json"
    if earlier.exists():
        for row in json.loads(earlier.read_text(encoding="utf-8"))["media"]:
            (folder / row["file"]).unlink(missing_ok=True)
        earlier.unlink()


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("outdir", type=Path)
    folder = parser.parse_args().outdir
    folder.mkdir(parents=True, exist_ok=True)
    clear(folder)
    document = build(folder)
    with open(folder / "demo.json", "w", encoding="utf-8") as file:
        json.dump(document, file, ensure_ascii=False, indent=1)
        file.write("\n")
    counts = ", ".join(f"{len(document[a])} {a}" for a in ARRAYS.values() if document[a])
    print(f"{folder / 'demo.json'}: {counts}")


if __name__ == "__main__":
    main()
