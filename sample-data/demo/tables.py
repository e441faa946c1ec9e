# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Reads the tables beside this package: rows parted by bars, and stanzas parted by empty lines."""

from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent / "tables"


def rows(name, width):
    """The rows of a table, each as a list of `width` texts; a row for both sides comes twice."""
    for line in _lines(name):
        for text in both_sides(line):
            cells = [cell.strip() for cell in text.split("|")]
            if len(cells) > width:
                raise ValueError(f"{name}: more than {width} columns: {line}")
            yield cells + [""] * (width - len(cells))


def both_sides(line):
    """`?` stands for L and R, {side} and {Side} for left and right."""
    if not line.startswith("?"):
        return [line]
    return [
        line.replace("?", letter).replace("{side}", side).replace("{Side}", side.capitalize())
        for letter, side in (("L", "left"), ("R", "right"))
    ]


def stanzas(name):
    """Pairs of a stanza's first line and its `key: value` lines; a key may come several times."""
    text = (FOLDER / name).read_text(encoding="utf-8")
    for block in text.split("\n\n"):
        lines = [line for line in block.splitlines() if line and not line.startswith("#")]
        if lines:
            yield lines[0].strip(), Fields(name, lines[1:])


class Fields:
    """The lines of one stanza."""

    def __init__(self, name, lines):
        self._pairs = []
        for line in lines:
            key, colon, value = line.partition(":")
            if not colon:
                raise ValueError(f"{name}: not `key: value`: {line}")
            self._pairs.append((key.strip(), value.strip()))

    def pairs(self):
        return list(self._pairs)

    def all(self, key):
        return [value for known, value in self._pairs if known == key]

    def one(self, key):
        values = self.all(key)
        return values[0] if values and values[0] else None

    def words(self, key):
        return (self.one(key) or "").split()

    def number(self, key):
        value = self.one(key)
        return int(value) if value else None

    def yes(self, key):
        """True, false, or None when nothing is said."""
        return {"yes": True, "no": False, None: None}[self.one(key)]


def number(text):
    """A whole number where the text is one, else a fraction; None for an empty text."""
    if not text:
        return None
    return float(text) if "." in text else int(text)


def changes(text):
    """`a=1 ; b=2` as a dictionary."""
    parts = [part.partition("=") for part in text.split(" ; ") if part.strip()]
    return {key.strip(): value.strip() for key, _, value in parts}


def _lines(name):
    text = (FOLDER / name).read_text(encoding="utf-8")
    return [line for line in text.splitlines() if line.strip() and not line.startswith("#")]
