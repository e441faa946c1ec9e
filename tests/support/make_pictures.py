#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes the pictures that the tests of core/evidence read: make_pictures.py FOLDER.

Everything is made with Pillow, which also tells how a turned picture looks upright (`*.rgb`: the
bytes of its pixels), so that our reading is compared with another program's.
"""
import struct
import sys
import zlib
from pathlib import Path

from PIL import Image, ImageCms, ImageDraw, ImageOps

ORIENTATION, EXIF_IFD, TAKEN, OFFSET = 0x0112, 0x8769, 0x9003, 0x9011


def drawing(width, height):
    """A picture whose four corners and edges all differ."""
    image = Image.new("RGB", (width, height), (200, 200, 190))
    draw = ImageDraw.Draw(image)
    x, y = width // 2, height // 2
    draw.rectangle((0, 0, x - 1, y - 1), fill=(220, 40, 40))
    draw.rectangle((x, 0, width, y - 1), fill=(40, 180, 60))
    draw.rectangle((0, y, x - 1, height), fill=(40, 70, 210))
    draw.rectangle((width // 8, 0, width // 4, height // 8), fill=(250, 240, 60))
    return image


def exif(orientation=None, taken=None, offset=None):
    tags = Image.Exif()
    if orientation:
        tags[ORIENTATION] = orientation
    original = {}
    if taken:
        original[TAKEN] = taken
    if offset:
        original[OFFSET] = offset
    if original:
        tags[EXIF_IFD] = original
    return tags


def save_turned(folder):
    for orientation in range(1, 9):
        image = drawing(96, 64)
        name = folder / f"turned{orientation}.jpg"
        image.save(name, quality=95, subsampling=0, exif=exif(orientation=orientation))
        with Image.open(name) as stored:
            (folder / f"upright{orientation}.rgb").write_bytes(
                ImageOps.exif_transpose(stored).convert("RGB").tobytes())


def save_timed(folder):
    times = {
        "naive": exif(taken="2026:03:14 15:23:07"),
        "offset": exif(taken="2026:07:15 14:00:30", offset="+02:00", orientation=6),
        "midnight": exif(taken="2026:07:15 03:30:00", offset="+00:00"),
        "blank": exif(taken="    :  :     :  :  "),
        "zero": exif(taken="0000:00:00 00:00:00"),
        "oddoffset": exif(taken="2026:03:14 15:23:07", offset="   :  "),
    }
    for index, (name, tags) in enumerate(times.items()):
        drawing(80 + index, 60).save(folder / f"{name}.jpg", quality=90, exif=tags)
    (folder / "exif.bin").write_bytes(
        exif(taken="2026:05:02 09:41:00", offset="-04:00").tobytes())


def save_kinds(folder):
    drawing(90, 60).save(folder / "plain.jpg", quality=90)
    drawing(91, 60).save(folder / "progressive.jpg", quality=90, progressive=True)
    drawing(92, 60).convert("L").save(folder / "grey.jpg", quality=90)
    drawing(93, 60).convert("CMYK").save(folder / "cmyk.jpg", quality=90)
    drawing(94, 60).save(folder / "plain.png")
    drawing(95, 60).convert("P", palette=Image.Palette.ADAPTIVE).save(folder / "palette.png")
    glass = drawing(96, 60).convert("RGBA")
    glass.putalpha(0)
    glass.save(folder / "glass.png")
    Image.new("I", (97, 60), 0x8000).save(folder / "deep.png")
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    drawing(98, 60).save(folder / "profile.jpg", quality=90, icc_profile=profile)
    (folder / "profile.icc").write_bytes(profile)
    drawing(3000, 2000).save(folder / "large.jpg", quality=90, exif=exif(orientation=8))


def chunk(kind, content):
    return (struct.pack(">I", len(content)) + kind + content
            + struct.pack(">I", zlib.crc32(kind + content)))


def save_hostile(folder):
    """A PNG that claims 3.6 gigapixels, and a JPEG that truly has 300 megapixels."""
    header = struct.pack(">IIBBBBB", 60000, 60000, 8, 2, 0, 0, 0)
    (folder / "bomb.png").write_bytes(
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", header)
        + chunk(b"IDAT", zlib.compress(bytes(100000))) + chunk(b"IEND", b""))
    Image.MAX_IMAGE_PIXELS = None
    Image.new("L", (30000, 10000), 90).save(folder / "huge.jpg", quality=60)


def main():
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    save_turned(folder)
    save_timed(folder)
    save_kinds(folder)
    save_hostile(folder)


if __name__ == "__main__":
    main()
