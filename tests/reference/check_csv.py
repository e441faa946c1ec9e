#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Compares lists written as CSV with the interchange document of the same records."""

import argparse
import csv
import json
import sys
from pathlib import Path


def value(cell, expected):
    """The cell as what the document has there."""
    if isinstance(expected, str):
        return cell[1:] if cell[:1] == "'" and expected[:1] in "=+-@\t\r" else cell
    return json.loads(cell)


def differences(name, rows, expected):
    if len(rows) != len(expected):
        yield f"{name}: {len(rows)} rows instead of {len(expected)}"
    for number, (row, record) in enumerate(zip(rows, expected)):
        for field, cell in row.items():
            if field not in record:
                if cell:
                    yield f"{name} {number} {field}: {cell!r} instead of nothing"
            elif value(cell, record[field]) != record[field]:
                yield f"{name} {number} {field}: {cell!r} instead of {record[field]!r}"
        yield from (f"{name} {number}: no column {f}" for f in record if f not in row)


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path, help="with document.json and the folder lists")
    folder = parser.parse_args().folder
    document = json.loads((folder / "document.json").read_text(encoding="utf-8"))
    arrays = {k: v for k, v in document.items() if isinstance(v, list)}
    arrays["project"] = [document["project"]]
    found = []
    for name, records in arrays.items():
        with open(folder / "lists" / f"{name}.csv", encoding="utf-8", newline="") as file:
            found += differences(name, list(csv.DictReader(file, strict=True)), records)
    print("\n".join(found[:20]) or f"{len(arrays)} lists, every value found")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
