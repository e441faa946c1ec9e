# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""How an expected answer is held against a real one."""

import json

_TELLING = ("rule", "what", "weight", "record", "id", "closing", "moment", "state", "closings")


def differences(expected, answer, place=""):
    """Lines that say where the two differ; objects only on the keys that are expected."""
    if isinstance(expected, dict) and isinstance(answer, dict):
        found = []
        for key, value in expected.items():
            if key in answer:
                found += differences(value, answer[key], f"{place}/{key}")
            else:
                found.append(f"{place}/{key}: missing")
        return found
    if isinstance(expected, list) and isinstance(answer, list):
        return _list_differences(expected, answer, place)
    if type(expected) is not type(answer) or expected != answer:
        return [f"{place}: expected {expected!r}, got {answer!r}"]
    return []


def _list_differences(expected, answer, place):
    if len(expected) == len(answer):
        return [line for index, pair in enumerate(zip(expected, answer))
                for line in differences(*pair, f"{place}/{index}{_name(pair[0])}")]
    lines = [f"{place}: expected {len(expected)} rows, got {len(answer)}"]
    lines += _only_in(" only expected", expected, answer)
    lines += _only_in(" only given", answer, expected)
    return lines


def _only_in(label, rows, others):
    """Rows that the other list has nothing like."""
    known = {_brief(row) for row in others}
    return [f"{label}: {_brief(row)}" for row in rows if _brief(row) not in known]


def _brief(row):
    if not isinstance(row, dict):
        return json.dumps(row)
    return " ".join(str(row[key]) for key in _TELLING if key in row) or json.dumps(row)


def _name(row):
    return f" ({_brief(row)})" if isinstance(row, dict) else ""
