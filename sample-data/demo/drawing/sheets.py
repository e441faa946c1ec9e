# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Papers: shipping lists, letters, cards as PDF; signed reports and receipts as pictures."""

import random

from demo.drawing.pen import Pen, mix

SHEET_SIZE, RECEIPT_SIZE = (1000, 1400), (640, 1000)


def pdf(title, day, lines):
    """A page of text in one of the typefaces that every reader has; the bytes of the file."""
    text = ["BT", "/F1 22 Tf", "1 0 0 1 64 770 Tm", f"({_quoted(title)}) Tj", "/F1 14 Tf",
            "1 0 0 1 64 738 Tm", f"({day}) Tj"]
    for n, line in enumerate(lines):
        text += [f"1 0 0 1 64 {700 - 26 * n} Tm", f"({_quoted(line)}) Tj"]
    content = "\n".join([*text, "ET"]).encode("latin-1")
    objects = [
        b"<< /Type /Catalog /Pages 2 0 R >>",
        b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        b"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Contents 4 0 R "
        b"/Resources << /Font << /F1 5 0 R >> >> >>",
        b"<< /Length %d >>\nstream\n%s\nendstream" % (len(content), content),
        b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>",
    ]
    return _file_of(objects)


def _quoted(text):
    return text.replace("\\", "\\\\").replace("(", "\\(").replace(")", "\\)")


def _file_of(objects):
    data, places = bytearray(b"%PDF-1.4\n"), []
    for n, body in enumerate(objects, 1):
        places.append(len(data))
        data += b"%d 0 obj\n%s\nendobj\n" % (n, body)
    start = len(data)
    data += b"xref\n0 %d\n0000000000 65535 f \n" % (len(objects) + 1)
    for place in places:
        data += b"%010d 00000 n \n" % place
    data += b"trailer\n<< /Size %d /Root 1 0 R >>\nstartxref\n%d\n%%%%EOF\n" % (
        len(objects) + 1, start)
    return bytes(data)


def sheet(title, day, lines):
    """A filled-in and signed report, scanned."""
    pen = Pen(SHEET_SIZE, random.Random(title))
    pen.fill(((244, 243, 238), (252, 251, 247)), brushed=False)
    pen.pencil(70, 70, title, 4)
    pen.pencil(70, 150, f"Held on {day}", 3)
    for n, line in enumerate(lines):
        y = 260 + 90 * n
        pen.pencil(80, y, f"{n + 1}", 3)
        pen.pencil(130, y, line, 2.4, (34, 50, 112))
        pen.draw.line([(70, y + 50), (930, y + 50)], fill=(170, 170, 166), width=2)
    for x, who in ((80, "inspector"), (560, "builder")):
        pen.draw.line([(x, 1260), (x + 340, 1260)], fill=(90, 90, 88), width=2)
        pen.pencil(x, 1280, who, 2.4)
        pen.draw.line(_signature(pen, x + 20, 1240), fill=(30, 40, 100), width=5, joint="curve")
    return pen.image


def receipt(title, day, lines):
    """A till receipt, a little crumpled."""
    pen = Pen(RECEIPT_SIZE, random.Random(title))
    pen.fill(((150, 118, 82), (196, 164, 124)))
    pen.drop_box(70, 40, 570, 960, 16)
    pen.settle(5)
    pen.box(70, 40, 570, 960, ((230, 228, 222), (251, 250, 246)), brushed=False)
    pen.pencil(110, 90, title, 3.4)
    pen.pencil(110, 150, day, 3)
    for n, line in enumerate(lines):
        pen.pencil(110, 240 + 60 * n, line, 2.6)
    pen.pencil(110, 780, "paid, thank you", 3, mix((60, 60, 62), (130, 130, 130), 0.4))
    return pen.image


def _signature(pen, x, y):
    height = 0
    points = []
    for i in range(26):
        height = -46 * pen.rng.random() if i % 2 else 14 * pen.rng.random()
        points.append((x + i * 11, y + height * (1 - i / 34)))
    return points
