# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""What is wrong, ringed in grease pencil, and what it looks like when it is mended."""

import math

from demo.drawing.details import WIRES, smooth
from demo.drawing.pen import CLOTH, DARK, FLOOR, METAL, mix
from demo.drawing.structure import skin_of


def overdriven(pen, part):
    spots = _close_rivets(pen, part)
    for x, y in spots[1:3]:
        pen.disc(x, y, 92, mix(*METAL, 0.2))
        pen.disc(x - 4, y - 5, 86, mix(*METAL, 0.62))
        pen.disc(x - 6, y - 8, 60, mix(*METAL, 0.8))
        pen.draw.arc([x - 88, y - 88, x + 88, y + 88], 20, 70, fill=(60, 60, 62), width=6)
    _ring(pen, spots[1][0] + (spots[2][0] - spots[1][0]) / 2, spots[1][1], 220)


def _close_rivets(pen, part):
    """Four large heads; the place where a defect is drawn over the second."""
    pen.fill(skin_of(part))
    y = pen.h * 0.5
    spots = [(pen.w * (0.14 + 0.24 * i), y + pen.rng.uniform(-8, 8)) for i in range(4)]
    for x, spot in spots:
        pen.drop_disc(x, spot, 66, 18, 170)
    pen.settle(4)
    for x, spot in spots:
        pen.ball(x, spot, 64, METAL)
    return spots


def crack(pen, part):
    """The corner of a rib between two relief notches, very close."""
    tones = skin_of(part)
    pen.fill(tones)
    x, y = pen.w * 0.5, pen.h * 0.46
    pen.hole(pen.w * 0.2, y, 150, 170, tones)
    top = pen.h * 0.72
    pen.drop_box(0, top, pen.w, pen.h, -18)
    pen.settle(6)
    pen.box(0, top, pen.w, pen.h, (mix(*tones, 0.5), mix(tones[1], (255, 255, 255), 0.3)))
    for notch in (0.34, 0.66):
        pen.disc(pen.w * notch, top, 40, (30, 30, 32))
        pen.box(pen.w * notch - 40, top, pen.w * notch + 40, pen.h, DARK)
    pen.rivets((pen.w * 0.42, pen.h * 0.87), (pen.w * 0.58, pen.h * 0.87), 3, 16, tones)
    points = [(pen.w * 0.66 - 20, top - 34)]
    for _ in range(8):
        points.append((points[-1][0] - pen.rng.uniform(10, 22),
                       points[-1][1] - pen.rng.uniform(14, 26)))
    pen.draw.line(points, fill=(26, 24, 24), width=5)
    pen.draw.line([(px + 5, py + 2) for px, py in points], fill=(236, 236, 236), width=2)
    _ring(pen, points[4][0], points[4][1], 150)


def gouge(pen, part):
    _flange(pen)
    x, y = pen.w * 0.5, pen.h * 0.46
    for i in range(7):
        shift = pen.rng.uniform(-10, 10)
        pen.draw.line([(x - 70 + i * 6, y - 40 + shift), (x + 50 + i * 7, y + 30 + shift)],
                      fill=mix((250, 250, 250), (70, 70, 74), i / 6), width=6)
    _ring(pen, x + 10, y, 150)


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
    """Holes near an edge, the calliper's jaws over it."""
    line = _edge_with_holes(pen, part)
    x = pen.w * 0.39
    pen.drop_box(x + 60, line - 60, x + 420, line + 130, 20)
    pen.settle(5)
    pen.sheet([(x + 30, line - 62), (x + 420, line - 62), (x + 420, line + 10),
               (x + 90, line - 30)], ((150, 152, 154), (244, 245, 246)))
    pen.sheet([(x + 30, line + 2), (x + 420, line + 40), (x + 420, line + 130),
               (x + 60, line + 60)], ((140, 142, 144), (236, 237, 238)))


def _edge_with_holes(pen, part):
    pen.fill(CLOTH, brushed=False)
    line = pen.h * 0.62
    pen.drop_box(-40, -40, pen.w, line, 24)
    pen.settle(6)
    pen.box(0, 0, pen.w, line, skin_of(part))
    for i in range(4):
        pen.hole(pen.w * (0.16 + 0.23 * i), line - (62 if i == 1 else 110), 34, 34)
    return line


def figure_eight(pen, part):
    pen.fill(METAL)
    for i in range(5):
        pen.hole(pen.w * (0.12 + 0.19 * i), pen.h * 0.5, 36, 36)
    pen.hole(pen.w * 0.5 + 34, pen.h * 0.5 + 14, 33, 33)
    _ring(pen, pen.w * 0.51, pen.h * 0.5, 130)


def dent(pen, part):
    pen.fill(METAL)
    x, y = pen.w * 0.55, pen.h * 0.55
    for i in range(12):
        share = i / 11
        pen.disc(x + 16 * share, y + 14 * share, 170 * (1 - share) + 14,
                 mix(mix(*METAL, 0.66), (92, 95, 98), share * 0.8), 130 * (1 - share) + 12)
    pen.draw.arc([x - 150, y - 112, x + 160, y + 124], 10, 110, fill=(240, 241, 242), width=7)
    _ring(pen, x, y, 220)


def burr(pen, part):
    """A raised, bright edge along part of a sheet."""
    line = _edge_with_holes(pen, part)
    x = pen.w * 0.6
    for i in range(44):
        tip = line + pen.rng.uniform(3, 20)
        pen.draw.line([(x - 160 + i * 8, line - 5), (x - 156 + i * 8, tip)],
                      fill=mix((250, 250, 252), (120, 122, 124), pen.rng.random() * 0.6), width=4)
    _ring(pen, x + 10, line, 190)


def drain(pen, part):
    """The lowest corner of a bay: stiffener, rivets, the drain hole half covered."""
    tones = skin_of(part)
    pen.fill((mix(tones[0], (0, 0, 0), 0.2), mix(*tones, 0.8)))
    pen.rivets((40, pen.h * 0.22), (pen.w - 40, pen.h * 0.22), pen.w // 70, 12, tones)
    pen.hole(pen.w * 0.48, pen.h * 0.6, 52, 52, tones)
    top, bottom = pen.h * 0.4, pen.h * 0.6
    pen.drop_box(0, top, pen.w, bottom, 24)
    pen.settle(6)
    pen.box(0, top, pen.w, bottom, (mix(*tones, 0.5), mix(tones[1], (255, 255, 255), 0.3)))
    pen.rivets((50, (top + bottom) / 2), (pen.w - 50, (top + bottom) / 2), pen.w // 80, 14, tones)
    _ring(pen, pen.w * 0.48, pen.h * 0.62, 120)


def chafe(pen, part):
    tones = skin_of(part)
    pen.fill(tones)
    x, y = pen.w * 0.5, pen.h * 0.5
    pen.hole(x, y, 230, 210, tones)
    curve = smooth([(-20, y + 60), (x, y + 120), (pen.w + 20, y + 10)])
    for n, colour in enumerate(pen.rng.sample(WIRES[:5], 3)):
        pen.wire([(px, py + n * 26) for px, py in curve], colour, 30)
    pen.draw.line([(x - 40, y + 176), (x + 70, y + 172)], fill=(214, 150, 80), width=16)
    pen.draw.line([(x - 34, y + 172), (x + 60, y + 168)], fill=(250, 210, 150), width=5)
    _ring(pen, x + 16, y + 172, 120)


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
    _ring(pen, x - 120, y - 60, 90)


def _ring(pen, x, y, r):
    """A ring in grease pencil around what is meant."""
    points = [(x + r * math.cos(a / 10) + pen.rng.uniform(-3, 3),
               y + r * 0.8 * math.sin(a / 10) + pen.rng.uniform(-3, 3)) for a in range(66)]
    pen.draw.line(points, fill=(206, 46, 40), width=6, joint="curve")
