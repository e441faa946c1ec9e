# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes a document on which two programs differ as small as it gets."""

import copy


def shrink(document, still_differs):
    """Leaves out rows, then fields, one by one, as long as `still_differs(document)` holds."""
    document = copy.deepcopy(document)
    while _drop_rows(document, still_differs) or _drop_fields(document, still_differs):
        pass
    return document


def _drop_rows(document, still_differs):
    dropped = False
    for rows in [value for value in document.values() if isinstance(value, list)]:
        for row in list(rows):
            place = rows.index(row)
            rows.remove(row)
            if still_differs(document):
                dropped = True
            else:
                rows.insert(place, row)
    return dropped


def _drop_fields(document, still_differs):
    dropped = False
    for row in [r for rows in document.values() if isinstance(rows, list) for r in rows]:
        for field in [f for f in row if f != "id"]:
            value = row.pop(field)
            if still_differs(document):
                dropped = True
            else:
                row[field] = value
    return dropped
