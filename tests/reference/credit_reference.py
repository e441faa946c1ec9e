#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The major-portion account of a document, in whole tenths and half ticks."""

import argparse
import json

from document import Document
from profiles import PROFILES
from words import Words

COLUMNS = ("kit_tenths", "commercial_tenths", "assembly_tenths", "fabrication_tenths")


def credit(document):
    rows = sorted(document.all("credit_task"), key=lambda r: r.id)
    applicable = [r for r in rows if not r.not_applicable]
    sums = {column: sum(getattr(r, column) for r in applicable) for column in COLUMNS}
    builder = sums["assembly_tenths"] + sums["fabrication_tenths"]
    everyone = sum(sums.values())
    hundredths = builder * 10000 // everyone if everyone else None
    basis = PROFILES[document.project.profile].credit_basis
    ticks = _two_columns(applicable) if basis == "ticks" else None
    share_passes = 2 * builder > everyone
    return {
        "profile": document.project.profile, "rows": len(rows),
        "applicable_rows": len(applicable), **sums,
        "share_hundredths": hundredths,
        "share_text": None if hundredths is None else f"{hundredths // 100}.{hundredths % 100:02}",
        "share_passes": share_passes, "basis": basis,
        "passes": share_passes if ticks is None else ticks["passes"],
        "two_columns": ticks,
        "evidence_gaps": _evidence_gaps(document, applicable),
    }


def _builder_tenths(row):
    return row.assembly_tenths + row.fabrication_tenths


def _two_columns(rows):
    builder = maker = 0
    for row in rows:
        margin = _builder_tenths(row) - row.kit_tenths - row.commercial_tenths
        builder += 2 if margin > 0 else 1 if margin == 0 else 0
        maker += 2 if margin < 0 else 1 if margin == 0 else 0
    return {"builder_half_ticks": builder, "maker_half_ticks": maker, "passes": builder > maker}


def _evidence_gaps(document, rows):
    words = Words(document)
    pictures = {m.id: m for m in document.all("media") if m.kind in ("photo", "video")}
    gaps = []
    for row in rows:
        places = set().union(*(words.subtree(c) for c in row.component_ids))
        at_work = any(
            "builder_at_work" in m.shows and any(
                link["subject"] == "component" and link["id"] in places for link in m.links)
            for m in pictures.values())
        if _builder_tenths(row) and not at_work and not any(i in pictures for i in row.media_ids):
            gaps.append(row.id)
    return gaps


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("document")
    print(json.dumps(credit(Document.read(parser.parse_args().document)), indent=1))


if __name__ == "__main__":
    main()
