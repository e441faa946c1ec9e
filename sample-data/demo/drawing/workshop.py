# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Things that stand or lie about: the frame, a wing in its jig, a door, crates, papers."""

import math

from demo.drawing.pen import CLOTH, CREAM, DARK, FLOOR, METAL, WOOD, mix
from demo.drawing.structure import RED_SEAL


def frame(pen, part):
    """Welded tubes: longerons, uprights, diagonals."""
    pen.fill(FLOOR, brushed=False)
    for i in range(7):
        pen.draw.line([(0, pen.h * i / 6), (pen.w, pen.h * i / 6 + 20)], fill=(84, 80, 75), width=3)
    tones = CREAM if pen.rng.random() < 0.7 else DARK
    y0, y1 = pen.h * pen.rng.uniform(0.16, 0.24), pen.h * pen.rng.uniform(0.74, 0.82)
    bays = 3 if pen.w > pen.h else 2
    posts = [pen.w * (i + pen.rng.uniform(0.2, 0.3)) / bays for i in range(bays + 1)]
    tubes = [((0, y0), (pen.w, y0 + 30)), ((0, y1), (pen.w, y1 - 46))]
    tubes += [((x, y0 + 4), (x + 12, y1 - 10)) for x in posts]
    tubes += [((a, y0), (b, y1 - 20)) for a, b in zip(posts, posts[1:])]
    for start, end in tubes:
        pen.drop_line([start, end], 52, 34, 150)
    pen.settle(7)
    for n, (start, end) in enumerate(reversed(tubes)):
        pen.tube(start, end, 34 if n < len(tubes) - 2 else 50, tones)
    for x in posts:
        for y in (y0 + 6, y1 - 16):
            pen.draw.arc([x - 34, y - 30, x + 44, y + 34], 200, 350,
                         fill=mix(tones[0], (0, 0, 0), 0.3), width=5)


def stringers(pen, part):
    """Spruce stringers bound to plywood formers over the frame."""
    frame(pen, part)
    for n in range(5):
        y = pen.h * (0.14 + 0.17 * n)
        pen.drop_line([(0, y), (pen.w, y + 24)], 26, 16)
        pen.settle(3)
        pen.sheet([(0, y), (pen.w, y + 24), (pen.w, y + 52), (0, y + 28)], WOOD)
    x = pen.w * pen.rng.uniform(0.35, 0.6)
    pen.drop_box(x, 0, x + 30, pen.h, 16)
    pen.settle(4)
    pen.box(x, 0, x + 30, pen.h, WOOD, turned=True)
    for n in range(5):
        y = pen.h * (0.14 + 0.17 * n) + 20
        for i in range(5):
            pen.draw.line([(x - 8, y - 20 + i * 10), (x + 40, y - 12 + i * 10)],
                          fill=(236, 230, 214), width=4)


def skeleton(pen, part):
    """A whole wing frame in the jig, from the ladder."""
    pen.fill((FLOOR[0], (164, 158, 148)), brushed=False)
    pen.box(0, 0, pen.w, pen.h * 0.26, ((120, 116, 108), (176, 172, 164)), brushed=False)
    left, right = pen.w * 0.05, pen.w * 0.96
    front, rear = pen.h * 0.36, pen.h * 0.72
    pen.drop([(left + 20, front + 60), (right + 30, front + 40), (right + 40, rear + 70),
              (left + 40, rear + 90)], 90)
    pen.settle(14)
    for n in range(8):
        x = left + (right - left) * (n + 0.3) / 8
        pen.sheet([(x, front), (x + 26, front), (x + 60, rear + 20), (x + 30, rear + 20)], METAL,
                  turned=True)
        for i in range(3):
            share = (i + 0.7) / 3.4
            pen.disc(x + 14 + 32 * share, front + (rear - front) * share, 8, (70, 70, 72), 14)
    pen.tube((left, front), (right, front - 24), 40, METAL)
    pen.tube((left + 40, rear), (right + 30, rear + 14), 30, METAL)
    for n in range(3):
        x = pen.w * (0.2 + 0.3 * n)
        pen.box(x, rear + 20, x + 30, pen.h, WOOD, turned=True)


def door(pen, part):
    """A door frame lying on felt, latch rod across."""
    pen.fill(((58, 72, 66), (88, 104, 96)), brushed=False)
    outer = (pen.w * 0.12, pen.h * 0.1, pen.w * 0.88, pen.h * 0.9)
    pen.drop_box(*outer, 26, 170)
    pen.settle(7)
    pen.box(*outer, METAL)
    pen.box(outer[0] + 110, outer[1] + 100, outer[2] - 110, outer[3] - 100,
            ((46, 58, 53), (74, 88, 81)), brushed=False)
    middle = (outer[1] + outer[3]) / 2
    pen.drop_line([(outer[0] + 40, middle), (outer[2] - 40, middle + 12)], 26, 16)
    pen.settle(3)
    pen.tube((outer[0] + 40, middle), (outer[2] - 40, middle + 12), 26, METAL)
    pen.nut(outer[0] + 56, outer[1] + 200, 24, 0.4, sealed=RED_SEAL)
    pen.nut(outer[0] + 56, outer[3] - 200, 24, 0.9, sealed=RED_SEAL)
    pen.rivets((outer[0] + 60, outer[1] + 46), (outer[2] - 60, outer[1] + 46), 16, 8)
    pen.rivets((outer[0] + 60, outer[3] - 46), (outer[2] - 60, outer[3] - 46), 16, 8)


def crate(pen, part):
    """Boards, steel band, a stencil."""
    pen.fill(FLOOR, brushed=False)
    for n in range(6):
        y = pen.h * (0.08 + 0.145 * n)
        pen.drop_box(pen.w * 0.06, y, pen.w * 0.94, y + pen.h * 0.13, 10)
        pen.settle(3)
        pen.box(pen.w * 0.06, y, pen.w * 0.94, y + pen.h * 0.13, WOOD)
    for x in (0.2, 0.76):
        pen.box(pen.w * x, pen.h * 0.06, pen.w * x + 34, pen.h * 0.96, DARK, turned=True)
    pen.pencil(pen.w * 0.33, pen.h * 0.38, "M2  0043", 11, (60, 44, 30))
    pen.pencil(pen.w * 0.33, pen.h * 0.55, "THIS SIDE UP", 7, (60, 44, 30))


def cables(pen, part):
    """Pulleys with guards, or turnbuckles, against the frame."""
    frame(pen, part)
    for n in range(2):
        y = pen.h * (0.4 + 0.2 * n)
        pen.drop_line([(0, y), (pen.w, y + 40)], 14, 20)
        pen.settle(3)
        pen.wire([(0, y), (pen.w, y + 40)], (150, 150, 152), 12)
        x = pen.w * (0.35 + 0.25 * n)
        if pen.rng.random() < 0.5:
            pen.ball(x, y + 60, 84, DARK)
            pen.nut(x, y + 60, 26, 0.5)
        else:
            pen.tube((x, y + 14), (x + 210, y + 24), 36, ((150, 120, 60), (226, 196, 120)))
            for i in range(6):
                pen.draw.line([(x + 30 + i * 24, y), (x + 50 + i * 24, y + 38)],
                              fill=(226, 226, 228), width=3)


def strut(pen, part):
    """A fork end with its jam nut and a card on a string."""
    pen.fill(CLOTH, brushed=False)
    y = pen.h * 0.46
    pen.drop_line([(0, y), (pen.w * 0.72, y + 30)], 120, 30, 160)
    pen.settle(8)
    pen.tube((0, y), (pen.w * 0.56, y + 24), 120, CREAM)
    pen.tube((pen.w * 0.54, y + 24), (pen.w * 0.74, y + 32), 52, METAL)
    pen.nut(pen.w * 0.6, y + 26, 52, 0.2)
    pen.ball(pen.w * 0.78, y + 34, 70, METAL)
    pen.disc(pen.w * 0.78, y + 34, 26, (24, 24, 26))
    left, top = pen.w * 0.2, y + 150
    pen.drop_box(left, top, left + 370, top + 180, 12)
    pen.settle(4)
    pen.box(left, top, left + 370, top + 180, ((214, 206, 178), (244, 238, 218)), brushed=False)
    pen.pencil(left + 24, top + 30, "M2-L1", 5)
    pen.pencil(left + 24, top + 100, "weld 0612", 5)


def bench(pen, part):
    """A surface on the balance stand."""
    pen.fill(WOOD)
    shape = [(pen.w * 0.1, pen.h * 0.3), (pen.w * 0.86, pen.h * 0.2), (pen.w * 0.92, pen.h * 0.5),
             (pen.w * 0.14, pen.h * 0.64)]
    pen.drop([(x + 40, y + 60) for x, y in shape], 170)
    pen.settle(12)
    pen.sheet(shape, METAL)
    for i in range(7):
        x = pen.w * (0.16 + 0.11 * i)
        for j in range(6):
            pen.flush(x, pen.h * (0.31 - 0.012 * i + 0.05 * j), 6)
    pen.box(pen.w * 0.42, pen.h * 0.6, pen.w * 0.6, pen.h * 0.86, DARK)
    pen.pencil(pen.w * 0.45, pen.h * 0.7, "-0.14", 7, (140, 220, 150))


def balloon(pen, part):
    """The leak test: a balloon on the vent, soap over the seams."""
    pen.fill(FLOOR, brushed=False)
    pen.drop_box(pen.w * 0.08, pen.h * 0.58, pen.w * 0.92, pen.h * 0.92, 26)
    pen.settle(8)
    pen.box(pen.w * 0.08, pen.h * 0.58, pen.w * 0.92, pen.h * 0.92, METAL)
    pen.rivets((pen.w * 0.1, pen.h * 0.584), (pen.w * 0.9, pen.h * 0.584), 26, 9)
    pen.rivets((pen.w * 0.1, pen.h * 0.86), (pen.w * 0.9, pen.h * 0.86), 26, 9)
    pen.tube((pen.w * 0.55, pen.h * 0.6), (pen.w * 0.55, pen.h * 0.53), 34, METAL)
    colour = ((150, 40, 60), (240, 120, 130))
    pen.draw.polygon([(pen.w * 0.53, pen.h * 0.54), (pen.w * 0.57, pen.h * 0.54),
                      (pen.w * 0.55, pen.h * 0.45)], fill=colour[0])
    pen.ball(pen.w * 0.55, pen.h * 0.36, pen.h * 0.14, colour)
    for _ in range(60):
        pen.flush(pen.rng.uniform(0.1, 0.5) * pen.w, pen.h * pen.rng.uniform(0.82, 0.9),
                  pen.rng.uniform(3, 9))


def sheet(pen, part):
    """A filled-in report on the wing, signed."""
    pen.fill(METAL)
    left, top, right, bottom = pen.w * 0.16, pen.h * 0.06, pen.w * 0.84, pen.h * 0.96
    pen.drop_box(left, top, right, bottom, 18)
    pen.settle(6)
    pen.box(left, top, right, bottom, ((226, 224, 216), (250, 249, 244)), brushed=False)
    pen.pencil(left + 40, top + 30, "INSPECTION REPORT", 4.4)
    for i in range(10):
        y = top + 130 + i * (bottom - top - 280) / 10
        pen.draw.line([(left + 40, y), (right - 40, y)], fill=(150, 150, 146), width=2)
        if i < 6:
            length = pen.rng.uniform(0.3, 0.7) * (right - left)
            pen.draw.line(_scrawl(pen, left + 60, y - 16, length), fill=(36, 50, 110), width=4)
    pen.draw.line(_scrawl(pen, right - 330, bottom - 70, 250), fill=(30, 40, 100), width=6)


def _scrawl(pen, x, y, length):
    return [(x + i * 7, y + 12 * math.sin(i * 1.7) + pen.rng.uniform(-7, 7))
            for i in range(int(length / 7))]
