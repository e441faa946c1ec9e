# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Draws the photographs and writes them as a camera does, with EXIF."""

import random

from PIL import Image

from demo.drawing import defects, details, structure, workshop
from demo.drawing.pen import Pen

LANDSCAPE, PORTRAIT = (1600, 1200), (1200, 1600)
# How the stored picture has to be turned so that the orientation tag turns it back upright.
STORED = {1: None, 3: Image.ROTATE_180, 6: Image.ROTATE_90, 8: Image.ROTATE_270}

ORIENTATION, EXIF_BLOCK = 0x0112, 0x8769
DATE_TIME, DATE_TIME_ORIGINAL, OFFSET_TIME_ORIGINAL = 0x0132, 0x9003, 0x9011


def scene(name):
    for drawings in (structure, workshop, details, defects):
        if hasattr(drawings, name):
            return getattr(drawings, name)
    raise ValueError(f"no drawing {name}")


def draw(name, part, seed, upright):
    """The picture called `name`, upright, in the given size; the same for the same seed.

    With it comes the place that an arrow should point at, in parts of width and height, or None.
    """
    rng = random.Random(seed)
    pen = Pen((upright[0] * 3 // 4, upright[1] * 3 // 4), rng)
    scene(name)(pen, part)
    return pen.finished(upright), pen.focus_seen


def write(path, picture, orientation, taken, offset):
    """Stores a picture; `taken` is the camera's own clock, `YYYY:MM:DD HH:MM:SS`."""
    turn = STORED[orientation]
    stored = picture.transpose(turn) if turn is not None else picture
    exif = Image.Exif()
    exif[ORIENTATION] = orientation
    exif[DATE_TIME] = taken
    block = {DATE_TIME_ORIGINAL: taken}
    if offset:
        block[OFFSET_TIME_ORIGINAL] = offset
    exif[EXIF_BLOCK] = block
    stored.save(path, quality=44, subsampling=2, exif=exif)
    return stored.size
