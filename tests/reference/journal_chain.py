# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Computes the chain of a project's journal with nothing but sqlite3 and hashlib.

Each row's hash is the SHA-256 over its columns but the hash, in order, each written
`<decimal byte length>:<bytes>,`; whole numbers in decimal; null as `-,`. The first previous hash
is 32 zero bytes. Exits 1 when a row does not fit.
"""

import hashlib
import sqlite3
import sys

COLUMNS = ("seq", "change_id", "stamp", "kind", "undoes", "who", "label", "schema",
           "changeset", "origin_hash", "previous_hash")


def written(value):
    if value is None:
        return b"-,"
    if isinstance(value, int):
        value = str(value)
    if isinstance(value, str):
        value = value.encode("utf-8")
    return str(len(value)).encode("ascii") + b":" + value + b","


def row_hash(row):
    return hashlib.sha256(b"".join(written(row[name]) for name in COLUMNS)).digest()


def faults(rows):
    found = []
    previous, stamp = bytes(32), -1
    for number, row in enumerate(rows, start=1):
        if row["seq"] != number:
            found.append(f"row {row['seq']} stands at place {number}")
        if row["previous_hash"] != previous:
            found.append(f"row {number} does not follow the row before it")
        if row["hash"] != row_hash(row):
            found.append(f"row {number} does not fit its hash")
        if row["stamp"] <= stamp:
            found.append(f"row {number} is not later than the row before it")
        if len(row["change_id"]) != 32 or not set(row["change_id"]) <= set("0123456789abcdef"):
            found.append(f"row {number} has the change_id {row['change_id']}")
        previous, stamp = row["hash"], row["stamp"]
    ids = {row["change_id"] for row in rows}
    if len(ids) != len(rows):
        found.append("a change_id stands twice")
    found += [f"row {row['seq']} undoes a change that is not there"
              for row in rows if row["undoes"] is not None and row["undoes"] not in ids]
    return found


def main():
    connection = sqlite3.connect(f"file:{sys.argv[1]}?mode=ro", uri=True)
    connection.row_factory = sqlite3.Row
    rows = [dict(row) for row in connection.execute("SELECT * FROM journal ORDER BY seq")]
    if len(rows) < 2:
        sys.exit("the journal has no rows to check")
    if tuple(rows[0]) != COLUMNS + ("hash",):
        sys.exit(f"the journal's columns are {tuple(rows[0])}")
    # A check that cannot fail is none: one altered word must be noticed.
    if not faults([{**rows[0], "label": rows[0]["label"] + "."}] + rows[1:]):
        sys.exit("an altered row was not noticed")
    found = faults(rows)
    print("\n".join(found) or f"{len(rows)} rows hold together")
    sys.exit(bool(found))


if __name__ == "__main__":
    main()
