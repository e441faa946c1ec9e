# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Close views: rivets, bolts, wires, controls, a hand."""

import math

from demo.drawing.pen import DARK, FLOOR, METAL, PRIMER, mix
from demo.drawing.structure import RED_SEAL, bay, nose, skin_of, tank

WIRES = ((206, 60, 48), (236, 232, 222), (52, 96, 168), (238, 196, 60), (44, 44, 48),
         (86, 150, 84), (226, 226, 226))
SEALS = (RED_SEAL, (232, 140, 40), (226, 202, 52))


def rivets(pen, part):
    """Rows of shop heads over a lap, or flush heads from outside."""
    tones = skin_of(part)
    pen.fill(tones)
    lap = pen.h * pen.rng.uniform(0.42, 0.58)
    pen.drop_box(0, 0, pen.w, lap, 16)
    pen.settle(4)
    pen.box(0, 0, pen.w, lap, (mix(*tones, 0.2), mix(tones[1], (255, 255, 255), 0.2)))
    flush = pen.rng.random() < 0.35
    pitch = pen.rng.choice((58, 66, 74))
    radius = pen.rng.choice((14, 17, 20))
    for row in (lap - 46, lap - 130, lap + 120, lap + 250):
        for x in range(34, pen.w, pitch):
            if flush:
                pen.flush(x, row, radius)
            else:
                pen.drop_disc(x, row, radius, 6, 130)
    if not flush:
        pen.settle(1)
        for row in (lap - 46, lap - 130, lap + 120, lap + 250):
            pen.rivets((34, row), (34 + (pen.w - 68) // pitch * pitch, row),
                       (pen.w - 68) // pitch + 1, radius, tones)
    pen.pencil(pen.w * 0.08, lap + 168, pen.rng.choice(("2.5D ok", "#30", "LEN 4", "row 3")), 4)


def bolts(pen, part):
    """Nuts on a fitting, each with its stripe of paint."""
    pen.fill(skin_of(part))
    box = (pen.w * 0.1, pen.h * 0.16, pen.w * 0.9, pen.h * 0.84)
    pen.drop_box(*box, 22, 170)
    pen.settle(6)
    pen.box(*box, pen.rng.choice((((120, 116, 90), (190, 184, 150)), METAL, DARK)))
    seal = pen.rng.choice(SEALS)
    across = pen.rng.choice((2, 3)) if pen.w > pen.h else 2
    down = 2 if pen.w > pen.h else 3
    spots = [(box[0] + (box[2] - box[0]) * (i + 0.5) / across,
              box[1] + (box[3] - box[1]) * (j + 0.5) / down)
             for i in range(across) for j in range(down)]
    for x, y in spots:
        pen.drop_disc(x, y, 92, 20, 170)
    pen.settle(5)
    for x, y in spots:
        pen.nut(x, y, 68, pen.rng.uniform(0, 1), sealed=seal)


def jam_nut(pen, part):
    """A rod end, its jam nut, the witness hole."""
    pen.fill(PRIMER)
    y = pen.h * 0.5
    pen.drop_line([(0, y), (pen.w * 0.86, y + 20)], 90, 34, 170)
    pen.settle(8)
    pen.tube((0, y), (pen.w * 0.5, y + 12), 104, METAL)
    pen.disc(pen.w * 0.44, y - 6, 10, (24, 24, 26))
    pen.tube((pen.w * 0.5, y + 12), (pen.w * 0.7, y + 16), 40, DARK)
    pen.nut(pen.w * 0.53, y + 12, 62, 0.3, sealed=pen.rng.choice(SEALS))
    pen.focus = (pen.w * 0.53, y - 70)
    pen.ball(pen.w * 0.76, y + 18, 88, METAL)
    pen.disc(pen.w * 0.76, y + 18, 34, (20, 20, 22))
    for i in range(9):
        x = pen.w * 0.575 + i * 13
        pen.draw.line([(x, y - 4), (x + 7, y + 34)], fill=(150, 150, 152), width=3)


def hinge(pen, part):
    """A bracket on a spar, a rod through its bores."""
    pen.fill(FLOOR, brushed=False)
    top = pen.h * 0.3
    pen.drop_box(0, top, pen.w, pen.h * 0.66, 24)
    pen.settle(6)
    pen.box(0, top, pen.w, pen.h * 0.66, skin_of(part))
    pen.rivets((30, top + 34), (pen.w - 30, top + 34), pen.w // 44, 10)
    for x in (pen.w * 0.22, pen.w * 0.66):
        shape = [(x, top + 70), (x + 170, top + 70), (x + 130, pen.h * 0.86),
                 (x + 40, pen.h * 0.86)]
        pen.drop([(px + 18, py + 14) for px, py in shape])
        pen.settle(4)
        pen.sheet(shape, METAL, turned=True)
        pen.nut(x + 54, top + 120, 24, 0.2, sealed=RED_SEAL)
        pen.nut(x + 118, top + 120, 24, 0.7, sealed=RED_SEAL)
    pen.tube((0, pen.h * 0.8), (pen.w, pen.h * 0.8 + 8), 26, ((110, 110, 114), (240, 240, 242)))


def bellcrank(pen, part):
    bay(pen, part)
    x, y = pen.w * 0.5, pen.h * 0.52
    arm = [(x - 280, y - 50), (x, y - 80), (x + 50, y + 250), (x - 40, y + 250), (x - 70, y + 50),
           (x - 280, y + 30)]
    pen.drop([(px + 30, py + 30) for px, py in arm], 190)
    pen.drop_line([(x - 260, y), (-20, y - 60)], 54, 30)
    pen.settle(7)
    pen.tube((x - 250, y - 10), (-20, y - 70), 54, METAL)
    pen.sheet(arm, METAL)
    pen.nut(x - 20, y - 10, 52, 0.2)
    pen.draw.line([(x - 60, y - 18), (x + 22, y + 2)], fill=(236, 236, 238), width=6)
    pen.focus = (x - 20, y - 80)
    pen.nut(x - 236, y - 10, 30, 0.5, sealed=RED_SEAL)
    pen.nut(x + 4, y + 208, 30, 0.8, sealed=RED_SEAL)


def wires(pen, part):
    """A laced bundle through grommets in two ribs."""
    tones = skin_of(part)
    pen.fill((mix(tones[0], (0, 0, 0), 0.5), mix(*tones, 0.2)))
    spots = [(pen.w * 0.28, pen.h * 0.52), (pen.w * 0.74, pen.h * 0.46)]
    for x, y in spots:
        pen.drop_box(x - 70, 0, x + 70, pen.h, 34, 190)
        pen.settle(7)
        pen.box(x - 70, 0, x + 70, pen.h, tones, turned=True)
        pen.rivets((x + 50, 30), (x + 50, pen.h - 30), 14, 8, tones)
        pen.grommet(x, y, 64)
    pen.focus = (spots[0][0], spots[0][1] - 80)
    _bundle(pen, [(-20, pen.h * 0.62), spots[0], (pen.w * 0.5, pen.h * 0.55), spots[1],
                  (pen.w + 20, pen.h * 0.4)])


def _bundle(pen, through):
    curve = smooth(through)
    pen.drop_line(curve, 70, 40, 150)
    pen.settle(7)
    colours = pen.rng.sample(WIRES, 5)
    for n, colour in enumerate(colours):
        aside = (n - 2) * 15
        pen.wire([(x, y + aside + 4 * math.sin(x / 90 + n)) for x, y in curve], colour, 17)
    for x, y in curve[4::7]:
        pen.draw.line([(x - 4, y - 46), (x + 8, y + 48)], fill=(246, 240, 224), width=9)


def smooth(points):
    """A smooth line through points, by cosine steps."""
    curve = []
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        for i in range(10):
            share = i / 10
            curve.append((x0 + (x1 - x0) * share,
                          y0 + (y1 - y0) * (1 - math.cos(math.pi * share)) / 2))
    return curve + [points[-1]]


def hand(pen, part):
    """A gloved hand pointing at what matters."""
    scene = tank if part.endswith("TK") else nose if "LE" in part or part == "RW-LL" else bay
    scene(pen, part)
    x, y = pen.w * 0.58, pen.h * 0.6
    glove = pen.rng.choice((((70, 86, 110), (136, 154, 178)), ((150, 110, 70), (212, 174, 128)),
                            ((60, 62, 64), (124, 126, 128))))
    pen.drop([(x - 60, y - 120), (x + 330, y + 10), (pen.w + 60, pen.h),
              (x + 180, pen.h + 40)], 150)
    pen.settle(14)
    pen.tube((pen.w + 60, pen.h + 120), (x + 230, y + 210), 210, ((60, 58, 70), (112, 108, 122)))
    pen.tube((x + 250, y + 220), (x + 130, y + 110), 220, glove)
    pen.ball(x + 140, y + 120, 118, glove)
    pen.tube((x + 110, y + 60), (x - 120, y - 90), 74, glove)
    pen.ball(x - 120, y - 90, 36, glove)
    for n in range(3):
        pen.ball(x + 188 - n * 6, y + 60 + n * 56, 35, glove)
        pen.tube((x + 190 - n * 6, y + 60 + n * 56), (x + 60 - n * 14, y + 70 + n * 52), 70, glove)
        pen.ball(x + 56 - n * 14, y + 72 + n * 52, 36, glove)
    pen.ball(x + 110, y + 210, 30, glove)
    pen.tube((x + 110, y + 210), (x - 4, y + 160), 60, glove)
    pen.ball(x - 6, y + 159, 31, glove)
