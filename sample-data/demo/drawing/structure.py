# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Views into structure: bays, spars, noses, tanks, the firewall."""

import math

from demo.drawing.pen import FLOOR, METAL, PRIMER, SEALANT, WARM_PRIMER, mix

RED_SEAL = (196, 58, 44)


def skin_of(part):
    """Tail pieces are bare inside, the wings grey primer, the rest warmer."""
    if part[:2] in ("LW", "RW"):
        return PRIMER
    return METAL if part[:2] in ("VF", "RU", "HS", "EV") else WARM_PRIMER


def bay(pen, part):
    """Ribs between two spars, seen into the open side."""
    tones = skin_of(part)
    pen.fill((mix(tones[0], (0, 0, 0), 0.45), mix(tones[0], tones[1], 0.35)))
    for y in range(int(pen.h * 0.3), int(pen.h * 0.8), int(pen.h * 0.14)):
        pen.rivets((30, y), (pen.w - 30, y), pen.w // 46, 6, tones)
    ribs = pen.rng.choice((3, 4)) if pen.w > pen.h else 2
    first = pen.rng.uniform(0.06, 0.16) * pen.w
    step = (pen.w - first * 1.2) / ribs
    for n in range(ribs):
        _rib(pen, first + n * step, step * 0.42, tones)
    _spar_edge(pen, 0, pen.h * 0.14, tones)
    _spar_edge(pen, pen.h * 0.87, pen.h, tones)
    if pen.rng.random() < 0.6:
        pen.pencil(first + step * 0.55, pen.h * 0.2, f"BAY {pen.rng.randint(1, 7)}", 3.4)


def _rib(pen, x, width, tones):
    top, bottom = pen.h * 0.12, pen.h * 0.9
    lean = width * 0.25
    web = [(x, top), (x + width, top), (x + width + lean, bottom), (x + lean, bottom)]
    pen.drop([(px + 36, py + 8) for px, py in web], 190)
    pen.settle(7)
    pen.sheet(web, tones, turned=True)
    holes = 3
    for i in range(holes):
        share = (i + 0.6) / (holes + 0.2)
        pen.hole(x + width * 0.5 + lean * share, top + (bottom - top) * share, width * 0.27,
                 (bottom - top) * 0.105, tones)
    flange = [(x + width, top), (x + width * 1.28, top), (x + width * 1.28 + lean, bottom),
              (x + width + lean, bottom)]
    pen.sheet(flange, (mix(tones[0], tones[1], 0.5), mix(tones[1], (255, 255, 255), 0.25)))
    pen.rivets((x + width * 1.14, top + 20), (x + width * 1.14 + lean, bottom - 20), 15, 8, tones)


def _spar_edge(pen, top, bottom, tones):
    pen.drop_box(0, top, pen.w, bottom, 22, 170)
    pen.settle(6)
    pen.box(0, top, pen.w, bottom, (mix(*tones, 0.3), mix(tones[1], (255, 255, 255), 0.2)))
    middle = (top + bottom) / 2
    pen.rivets((24, middle - 14), (pen.w - 24, middle - 14), pen.w // 38, 9, tones)
    pen.rivets((42, middle + 16), (pen.w - 42, middle + 16), pen.w // 38, 9, tones)


def spar(pen, part):
    """A spar web with caps, stiffeners and root doubler."""
    pen.fill(FLOOR, brushed=False)
    top, bottom = pen.h * 0.22, pen.h * 0.8
    pen.drop_box(0, top, pen.w, bottom, 30, 200)
    pen.settle(8)
    tones = METAL if pen.rng.random() < 0.5 else PRIMER
    pen.box(0, top, pen.w, bottom, tones)
    doubler = pen.w * pen.rng.uniform(0.3, 0.5)
    pen.drop_box(0, top, doubler, bottom, 8)
    pen.settle(2)
    pen.box(0, top, doubler, bottom, (mix(*tones, 0.25), mix(tones[1], (255, 255, 255), 0.15)))
    for x in range(int(doubler + 70), pen.w, int(pen.w * 0.14)):
        pen.drop_box(x, top, x + 44, bottom, 14)
        pen.settle(2)
        pen.box(x, top, x + 44, bottom, (mix(*tones, 0.4), tones[1]), turned=True)
        pen.rivets((x + 22, top + 110), (x + 22, bottom - 110), 8, 9)
    for low, high in ((top - 12, top + 74), (bottom - 74, bottom + 12)):
        pen.drop_box(0, low, pen.w, high, 14)
        pen.settle(3)
        pen.box(0, low, pen.w, high, (mix(*METAL, 0.35), (232, 234, 236)))
        pen.rivets((20, low + 28), (pen.w - 20, low + 28), pen.w // 34, 10)
        pen.rivets((38, low + 60), (pen.w - 38, low + 60), pen.w // 34, 10)
    for i in range(4):
        pen.hole(90 + i % 2 * 120, top + 180 + i // 2 * 150, 26, 26)


def nose(pen, part):
    """The leading edge seen from behind: nose ribs running into the bend."""
    tones = skin_of(part)
    pen.fill((mix(tones[0], (0, 0, 0), 0.55), mix(tones[0], (0, 0, 0), 0.1)))
    count = 5 if pen.w > pen.h else 3
    step = pen.w / count
    for n in range(count):
        x = n * step + pen.rng.uniform(0.1, 0.2) * step
        shape = [(x, pen.h * 0.92)]
        for i in range(13):
            a = math.pi * i / 12
            shape.append((x + step * 0.32 * (1 - math.cos(a)),
                          pen.h * 0.45 - math.sin(a) * pen.h * 0.33))
        shape.append((x + step * 0.64, pen.h * 0.92))
        pen.drop([(px + 30, py + 6) for px, py in shape], 180)
        pen.settle(6)
        pen.sheet(shape, tones, turned=True)
        pen.hole(x + step * 0.32, pen.h * 0.42, step * 0.13, pen.h * 0.1, tones)
        pen.hole(x + step * 0.32, pen.h * 0.68, step * 0.11, pen.h * 0.075, tones)
        pen.rivets((x + 12, pen.h * 0.5), (x + 12, pen.h * 0.9), 9, 7, tones)
    _spar_edge(pen, pen.h * 0.88, pen.h, tones)


def tank(pen, part):
    """Tank inside: dark fillets along every seam, tails brushed over."""
    pen.fill(METAL)
    ribs = 3 if pen.w > pen.h else 2
    step = pen.w / ribs
    for n in range(ribs):
        x = step * (n + 0.4) + pen.rng.uniform(-20, 20)
        pen.drop_box(x, 0, x + 90, pen.h, 26, 180)
        pen.settle(6)
        pen.box(x, 0, x + 90, pen.h, METAL, turned=True)
        for edge in (x - 8, x + 92):
            _fillet(pen, edge)
        for y in range(90, pen.h, 210):
            pen.hole(x + 46, y, 24, 44)
        for y in range(46, pen.h - 20, 52):
            pen.disc(x + 150 + pen.rng.uniform(-3, 3), y, 17 + pen.rng.uniform(0, 4), SEALANT)
            pen.disc(x + 146, y - 4, 5, (108, 104, 100))
    if pen.rng.random() < 0.5:
        x, y = pen.w * 0.8, pen.h * 0.72
        pen.disc(x, y, 86, SEALANT)
        pen.nut(x, y, 46, 0.1)


def _fillet(pen, x):
    points = [(x + pen.rng.uniform(-4, 4), y) for y in range(0, pen.h + 40, 40)]
    pen.draw.line(points, fill=SEALANT, width=26, joint="curve")
    pen.draw.line([(px - 6, py) for px, py in points], fill=(112, 108, 104), width=4)


def firewall(pen, part):
    """Bright sheet with doublers, pass-throughs and rivet rows."""
    pen.fill(((150, 152, 154), (232, 233, 234)))
    for left, top, right, bottom in ((0.06, 0.08, 0.3, 0.34), (0.7, 0.08, 0.94, 0.34),
                                     (0.34, 0.62, 0.66, 0.92)):
        box = (left * pen.w, top * pen.h, right * pen.w, bottom * pen.h)
        pen.drop_box(*box, 10)
        pen.settle(2)
        pen.box(*box, ((164, 166, 168), (240, 241, 242)))
        pen.rivets((box[0] + 22, box[1] + 22), (box[2] - 22, box[1] + 22), 9, 8)
        pen.rivets((box[0] + 22, box[3] - 22), (box[2] - 22, box[3] - 22), 9, 8)
    for x, y, r in ((0.45, 0.3, 46), (0.55, 0.44, 30), (0.2, 0.6, 38), (0.8, 0.55, 26)):
        pen.hole(x * pen.w, y * pen.h, r, r)
    pen.rivets((30, pen.h - 26), (pen.w - 30, pen.h - 26), pen.w // 40, 8)
