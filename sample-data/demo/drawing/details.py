# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Close views: rivets, bolts, wires, defects and their repair, a hand."""

import math

from demo.drawing.pen import CLOTH, DARK, FLOOR, METAL, PRIMER, WARM_PRIMER, WOOD, mix
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


def close_rivets(pen, part, tones=None):
    """Four large heads; the place where a defect is drawn over the second."""
    tones = tones or skin_of(part)
    pen.fill(tones)
    y = pen.h * 0.5
    spots = [(pen.w * (0.14 + 0.24 * i), y + pen.rng.uniform(-8, 8)) for i in range(4)]
    for x, spot in spots:
        pen.drop_disc(x, spot, 66, 18, 170)
    pen.settle(4)
    for x, spot in spots:
        pen.ball(x, spot, 64, METAL)
    return spots


def overdriven(pen, part):
    spots = close_rivets(pen, part)
    for x, y in spots[1:3]:
        pen.disc(x, y, 92, mix(*METAL, 0.2))
        pen.disc(x - 4, y - 5, 86, mix(*METAL, 0.62))
        pen.disc(x - 6, y - 8, 60, mix(*METAL, 0.8))
        pen.draw.arc([x - 88, y - 88, x + 88, y + 88], 20, 70, fill=(60, 60, 62), width=6)
    ring(pen, spots[1][0] + (spots[2][0] - spots[1][0]) / 2, spots[1][1], 220)


def crack(pen, part):
    tones = skin_of(part)
    bay(pen, part)
    x, y = pen.w * 0.52, pen.h * 0.46
    pen.box(x - 260, y - 190, x + 260, y + 190, tones)
    pen.hole(x - 150, y, 60, 80, tones)
    points = [(x - 88, y + 6)]
    for i in range(9):
        points.append((points[-1][0] + 26, points[-1][1] + pen.rng.uniform(-11, 13)))
    pen.draw.line(points, fill=(26, 24, 24), width=4)
    pen.draw.line([(px, py + 5) for px, py in points], fill=(236, 236, 236), width=2)
    ring(pen, x + 20, y, 170)


def gouge(pen, part):
    _flange(pen)
    x, y = pen.w * 0.5, pen.h * 0.46
    for i in range(7):
        shift = pen.rng.uniform(-10, 10)
        pen.draw.line([(x - 70 + i * 6, y - 40 + shift), (x + 50 + i * 7, y + 30 + shift)],
                      fill=mix((250, 250, 250), (70, 70, 74), i / 6), width=6)
    ring(pen, x + 10, y, 150)


def gouge_blended(pen, part):
    _flange(pen)
    x, y = pen.w * 0.5, pen.h * 0.46
    for i in range(9):
        share = i / 8
        pen.disc(x, y, 260 * (1 - share) + 30, mix(mix(*METAL, 0.72), (238, 240, 242), share),
                 62 * (1 - share) + 12)
    pen.pencil(x - 120, y + 110, "1.43", 6)


def _flange(pen):
    pen.fill((mix(METAL[0], (0, 0, 0), 0.2), mix(*METAL, 0.6)))
    top, bottom = pen.h * 0.34, pen.h * 0.6
    pen.drop_box(0, top, pen.w, bottom, 26)
    pen.settle(6)
    pen.box(0, top, pen.w, bottom, (mix(*METAL, 0.4), (228, 230, 232)))
    pen.rivets((40, bottom + 110), (pen.w - 40, bottom + 110), pen.w // 90, 17)


def edge(pen, part):
    """Holes near an edge, the calliper's tip against it."""
    pen.fill(CLOTH, brushed=False)
    line = pen.h * 0.62
    pen.drop_box(-40, -40, pen.w, line, 24)
    pen.settle(6)
    pen.box(0, 0, pen.w, line, skin_of(part))
    for i in range(4):
        pen.hole(pen.w * (0.16 + 0.23 * i), line - (62 if i == 1 else 110), 34, 34)
    x = pen.w * 0.39
    pen.drop_box(x + 60, line - 60, x + 420, line + 130, 20)
    pen.settle(5)
    pen.sheet([(x + 30, line - 62), (x + 420, line - 62), (x + 420, line + 10), (x + 90, line - 30)],
              ((150, 152, 154), (244, 245, 246)))
    pen.sheet([(x + 30, line + 2), (x + 420, line + 40), (x + 420, line + 130), (x + 60, line + 60)],
              ((140, 142, 144), (236, 237, 238)))


def figure_eight(pen, part):
    pen.fill(METAL)
    for i in range(5):
        pen.hole(pen.w * (0.12 + 0.19 * i), pen.h * 0.5, 36, 36)
    pen.hole(pen.w * 0.5 + 34, pen.h * 0.5 + 14, 33, 33)
    ring(pen, pen.w * 0.51, pen.h * 0.5, 130)


def dent(pen, part):
    pen.fill(METAL)
    x, y = pen.w * 0.55, pen.h * 0.55
    for i in range(12):
        share = i / 11
        pen.disc(x + 16 * share, y + 14 * share, 170 * (1 - share) + 14,
                 mix(mix(*METAL, 0.66), (92, 95, 98), share * 0.8), 130 * (1 - share) + 12)
    pen.draw.arc([x - 150, y - 112, x + 160, y + 124], 10, 110, fill=(240, 241, 242), width=7)
    ring(pen, x, y, 220)


def burr(pen, part):
    edge(pen, part)
    x, y = pen.w * 0.6, pen.h * 0.62
    for i in range(40):
        pen.draw.line([(x - 160 + i * 8, y), (x - 158 + i * 8, y + pen.rng.uniform(4, 22))],
                      fill=(240, 240, 242), width=3)
    ring(pen, x, y, 150)


def drain(pen, part):
    bay(pen, part)
    x, y = pen.w * 0.48, pen.h * 0.62
    tones = skin_of(part)
    pen.box(x - 250, y - 150, x + 250, y + 150, tones)
    pen.box(x - 250, y - 16, x + 250, y + 40, (mix(*tones, 0.5), mix(tones[1], (255, 255, 255), 0.3)))
    pen.hole(x, y + 80, 34, 34, tones)
    ring(pen, x, y + 70, 110)


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
        shape = [(x, top + 70), (x + 170, top + 70), (x + 130, pen.h * 0.86), (x + 40, pen.h * 0.86)]
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
    _bundle(pen, [(-20, pen.h * 0.62), spots[0], (pen.w * 0.5, pen.h * 0.55), spots[1],
                  (pen.w + 20, pen.h * 0.4)])


def _bundle(pen, through):
    curve = _curve(through)
    pen.drop_line(curve, 70, 40, 150)
    pen.settle(7)
    colours = pen.rng.sample(WIRES, 5)
    for n, colour in enumerate(colours):
        aside = (n - 2) * 15
        pen.wire([(x, y + aside + 4 * math.sin(x / 90 + n)) for x, y in curve], colour, 17)
    for x, y in curve[4::7]:
        pen.draw.line([(x - 4, y - 46), (x + 8, y + 48)], fill=(246, 240, 224), width=9)


def _curve(points):
    """A smooth line through points, by cosine steps."""
    curve = []
    for (x0, y0), (x1, y1) in zip(points, points[1:]):
        for i in range(10):
            share = i / 10
            curve.append((x0 + (x1 - x0) * share,
                          y0 + (y1 - y0) * (1 - math.cos(math.pi * share)) / 2))
    return curve + [points[-1]]


def chafe(pen, part):
    tones = skin_of(part)
    pen.fill(tones)
    x, y = pen.w * 0.5, pen.h * 0.5
    pen.hole(x, y, 230, 210, tones)
    curve = _curve([(-20, y + 60), (x, y + 120), (pen.w + 20, y + 10)])
    for n, colour in enumerate(pen.rng.sample(WIRES[:5], 3)):
        pen.wire([(px, py + n * 26) for px, py in curve], colour, 30)
    pen.draw.line([(x - 40, y + 176), (x + 70, y + 172)], fill=(214, 150, 80), width=16)
    pen.draw.line([(x - 34, y + 172), (x + 60, y + 168)], fill=(250, 210, 150), width=5)
    ring(pen, x + 16, y + 172, 120)


def weld(pen, part):
    """A cluster of tubes with its bead."""
    pen.fill(FLOOR, brushed=False)
    tones = DARK if pen.rng.random() < 0.5 else ((110, 112, 116), (190, 192, 196))
    x, y = pen.w * 0.5, pen.h * 0.56
    ends = [((0, y + 30), 150), ((pen.w, y - 20), 150), ((x - pen.w * 0.3, 0), 104),
            ((x + pen.w * 0.34, 0), 104)]
    for end, width in ends:
        pen.drop_line([(x, y), end], width, 40, 160)
    pen.settle(9)
    for end, width in reversed(ends):
        pen.tube((x, y), end, width, tones)
    for i in range(30):
        a = math.pi * (1.08 + 0.84 * i / 29)
        pen.ball(x + 190 * math.cos(a), y + 30 + 130 * math.sin(a), 17,
                 (mix(tones[0], (90, 70, 60), 0.5), mix(tones[1], (170, 150, 140), 0.4)))
    ring(pen, x - 120, y - 60, 90)


def hand(pen, part):
    """A gloved hand pointing at what matters."""
    scene = tank if part.endswith("TK") else nose if "LE" in part or part == "RW-LL" else bay
    scene(pen, part)
    x, y = pen.w * 0.58, pen.h * 0.6
    glove = pen.rng.choice((((70, 86, 110), (136, 154, 178)), ((150, 110, 70), (212, 174, 128)),
                            ((60, 62, 64), (124, 126, 128))))
    pen.drop([(x - 60, y - 120), (x + 330, y + 10), (pen.w + 60, pen.h), (x + 180, pen.h + 40)], 150)
    pen.settle(14)
    pen.tube((pen.w + 60, pen.h + 120), (x + 230, y + 210), 210, ((60, 58, 70), (112, 108, 122)))
    pen.tube((x + 250, y + 220), (x + 130, y + 110), 220, glove)
    pen.ball(x + 140, y + 120, 118, glove)
    pen.tube((x + 110, y + 60), (x - 120, y - 90), 74, glove)
    pen.ball(x - 120, y - 90, 36, glove)
    for n in range(3):
        pen.tube((x + 190 - n * 6, y + 60 + n * 56), (x + 60 - n * 14, y + 70 + n * 52), 70, glove)
        pen.ball(x + 56 - n * 14, y + 72 + n * 52, 36, glove)
    pen.tube((x + 90, y + 200), (x - 20, y + 150), 64, glove)


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
    pen.drop_box(pen.w * 0.08, pen.h * 0.5, pen.w * 0.92, pen.h * 0.9, 26)
    pen.settle(8)
    pen.box(pen.w * 0.08, pen.h * 0.5, pen.w * 0.92, pen.h * 0.9, METAL)
    pen.rivets((pen.w * 0.1, pen.h * 0.54), (pen.w * 0.9, pen.h * 0.54), 26, 9)
    pen.rivets((pen.w * 0.1, pen.h * 0.86), (pen.w * 0.9, pen.h * 0.86), 26, 9)
    pen.tube((pen.w * 0.68, pen.h * 0.52), (pen.w * 0.68, pen.h * 0.42), 34, METAL)
    colour = ((150, 40, 60), (240, 120, 130))
    pen.draw.polygon([(pen.w * 0.66, pen.h * 0.42), (pen.w * 0.7, pen.h * 0.42),
                      (pen.w * 0.68, pen.h * 0.34)], fill=colour[0])
    pen.ball(pen.w * 0.68, pen.h * 0.24, pen.h * 0.15, colour)
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
            pen.draw.line(_scrawl(pen, left + 60, y - 16, pen.rng.uniform(0.3, 0.7) * (right - left)),
                          fill=(36, 50, 110), width=4)
    pen.draw.line(_scrawl(pen, right - 330, bottom - 70, 250), fill=(30, 40, 100), width=6)


def _scrawl(pen, x, y, length):
    return [(x + i * 7, y + 12 * math.sin(i * 1.7) + pen.rng.uniform(-7, 7))
            for i in range(int(length / 7))]


def ring(pen, x, y, r):
    """A ring in grease pencil around what is meant."""
    points = [(x + r * math.cos(a / 10) + pen.rng.uniform(-3, 3),
               y + r * 0.8 * math.sin(a / 10) + pen.rng.uniform(-3, 3)) for a in range(66)]
    pen.draw.line(points, fill=(206, 46, 40), width=6, joint="curve")
