# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""A pen that draws metal, tube, rivets and wire with light from the upper left."""

import math

from PIL import Image, ImageChops, ImageDraw, ImageFilter, ImageFont, ImageOps

METAL = ((118, 123, 128), (206, 209, 211))
PRIMER = ((104, 114, 108), (166, 175, 164))
WARM_PRIMER = ((128, 118, 92), (186, 176, 146))
DARK = ((30, 30, 32), (66, 66, 68))
WOOD = ((140, 104, 66), (204, 170, 122))
CREAM = ((150, 144, 126), (228, 223, 208))
FLOOR = ((92, 88, 82), (138, 132, 124))
CLOTH = ((176, 170, 154), (226, 221, 206))
SEALANT = (52, 50, 48)


def mix(a, b, share):
    return tuple(round(x + (y - x) * share) for x, y in zip(a, b))


class Pen:
    """Draws on a picture of its own; shadows are gathered with `drop` and fall with `settle`."""

    def __init__(self, size, rng):
        self.w, self.h = size
        self.rng = rng
        self.image = Image.new("RGB", size)
        self.draw = ImageDraw.Draw(self.image)
        # What an arrow beside the picture points at: where it is drawn, and where it is seen.
        self.focus = self.focus_seen = None
        self._clear_shadows()

    # Surfaces

    def fill(self, tones, brushed=True):
        self.sheet([(0, 0), (self.w, 0), (self.w, self.h), (0, self.h)], tones, brushed)

    def sheet(self, corners, tones, brushed=True, turned=False):
        """A flat piece with a soft change of light over it, and the marks of the brush."""
        left, top = (int(min(c[i] for c in corners)) for i in (0, 1))
        right, bottom = (int(max(c[i] for c in corners)) + 1 for i in (0, 1))
        size = (max(2, right - left), max(2, bottom - top))
        light = Image.linear_gradient("L").rotate(90 if turned else 180)
        light = light.resize(size, Image.BILINEAR)
        if brushed:
            grain = self._grain((max(2, size[0] // 5), 10), 0.55)
            grain = grain.resize(size, Image.BILINEAR)
            light = Image.blend(light, grain, 0.28)
        piece = ImageOps.colorize(light, *tones)
        mask = Image.new("L", size, 0)
        ImageDraw.Draw(mask).polygon([(x - left, y - top) for x, y in corners], fill=255)
        self.image.paste(piece, (left, top), mask)

    def box(self, left, top, right, bottom, tones, **how):
        self.sheet([(left, top), (right, top), (right, bottom), (left, bottom)], tones, **how)

    # Shadows

    def drop(self, corners, depth=150):
        ImageDraw.Draw(self._shadows).polygon([(x / 4, y / 4) for x, y in corners], fill=depth)

    def drop_box(self, left, top, right, bottom, by=14, depth=150):
        self.drop([(left + by, top + by), (right + by, top + by), (right + by, bottom + by),
                   (left + by, bottom + by)], depth)

    def drop_line(self, points, width, by=12, depth=140):
        ImageDraw.Draw(self._shadows).line([((x + by) / 4, (y + by) / 4) for x, y in points],
                                           fill=depth, width=max(1, int(width / 4)))

    def drop_disc(self, x, y, r, by=8, depth=150):
        ImageDraw.Draw(self._shadows).ellipse(
            [(x - r + by) / 4, (y - r + by) / 4, (x + r + by) / 4, (y + r + by) / 4], fill=depth)

    def settle(self, softness=3):
        mask = self._shadows.filter(ImageFilter.GaussianBlur(softness))
        dark = mask.getbbox()
        if dark:
            place = tuple(4 * edge for edge in dark)
            size = (place[2] - place[0], place[3] - place[1])
            soft = mask.crop(dark).resize(size, Image.BILINEAR)
            self.image.paste((12, 12, 16), place, soft)
        self._clear_shadows()

    def _grain(self, size, strength):
        raw = Image.frombytes("L", size, self.rng.randbytes(size[0] * size[1]))
        return raw.point(lambda v: int(128 + (v - 128) * strength))

    def _clear_shadows(self):
        self._shadows = Image.new("L", (self.w // 4 + 1, self.h // 4 + 1), 0)

    # Things

    def disc(self, x, y, rx, colour, ry=None):
        ry = ry or rx
        self.draw.ellipse([x - rx, y - ry, x + rx, y + ry], fill=colour)

    def ball(self, x, y, r, tones):
        low, high = tones
        self.disc(x + r * 0.16, y + r * 0.18, r, mix(low, (0, 0, 0), 0.45))
        steps = max(5, min(24, int(r / 5)))
        for i in range(steps):
            share = i / (steps - 1)
            self.disc(x - r * 0.24 * share, y - r * 0.26 * share, r * (1 - 0.74 * share),
                      mix(low, high, share))

    def rivet(self, x, y, r=9, tones=METAL):
        self.ball(x, y, r, tones)

    def rivets(self, start, end, count, r=9, tones=METAL, skip=()):
        for i in range(count):
            if i not in skip:
                share = i / max(1, count - 1)
                self.rivet(start[0] + (end[0] - start[0]) * share,
                           start[1] + (end[1] - start[1]) * share, r, tones)

    def flush(self, x, y, r=9):
        self.draw.ellipse([x - r, y - r, x + r, y + r], outline=(96, 98, 100), width=2)
        self.draw.arc([x - r, y - r, x + r, y + r], 20, 110, fill=(222, 224, 226), width=2)

    def hole(self, x, y, rx, ry, tones=METAL, deep=(26, 27, 29)):
        """A lightening hole with its rolled rim."""
        low, high = tones
        self.disc(x, y, rx * 1.22, mix(low, (0, 0, 0), 0.25), ry * 1.16)
        self.disc(x - rx * 0.05, y - ry * 0.04, rx * 1.14, high, ry * 1.1)
        self.disc(x, y, rx * 1.02, mix(low, (0, 0, 0), 0.4), ry * 1.01)
        self.disc(x, y, rx, deep, ry)
        self.disc(x + rx * 0.1, y + ry * 0.14, rx * 0.82, mix(deep, (90, 92, 94), 0.35), ry * 0.8)

    def tube(self, start, end, width, tones=CREAM):
        """A round bar, lit along its upper side."""
        low, high = tones
        dx, dy = end[0] - start[0], end[1] - start[1]
        length = math.hypot(dx, dy) or 1
        nx, ny = -dy / length, dx / length
        if nx + ny > 0:
            nx, ny = -nx, -ny
        steps = max(8, min(28, int(width / 5)))
        for i in range(steps):
            share = i / (steps - 1)
            aside = width * 0.22 * share
            self.draw.line([(start[0] + nx * aside, start[1] + ny * aside),
                            (end[0] + nx * aside, end[1] + ny * aside)],
                           fill=mix(mix(low, (0, 0, 0), 0.35), high, share),
                           width=max(1, round(width * (1 - 0.86 * share))))

    def wire(self, points, colour, width=9):
        self.draw.line(points, fill=mix(colour, (0, 0, 0), 0.5), width=width, joint="curve")
        lifted = [(x - width * 0.15, y - width * 0.2) for x, y in points]
        self.draw.line(lifted, fill=colour, width=max(1, width - 4), joint="curve")
        self.draw.line([(x - width * 0.2, y - width * 0.3) for x, y in points],
                       fill=mix(colour, (255, 255, 255), 0.45), width=max(1, width // 5))

    def grommet(self, x, y, r):
        self.disc(x, y, r * 1.25, (16, 16, 18))
        self.draw.arc([x - r * 1.15, y - r * 1.15, x + r * 1.15, y + r * 1.15], 190, 280,
                      fill=(94, 94, 98), width=5)
        self.disc(x, y, r * 0.85, (5, 5, 6))

    def nut(self, x, y, r, angle=0.3, tones=METAL, sealed=None):
        """A hexagon nut on its washer with a bolt end; `sealed` is the colour of the stripe."""
        self.ball(x, y, r * 1.3, (mix(tones[0], (0, 0, 0), 0.1), mix(tones[0], tones[1], 0.8)))
        self.disc(x, y, r * 1.2, mix(tones[0], tones[1], 0.55))
        for grown, tone in ((1.02, mix(tones[0], (0, 0, 0), 0.4)), (0.92, mix(*tones, 0.75))):
            self.draw.polygon([(x + r * grown * math.cos(angle + i * math.pi / 3),
                                y + r * grown * math.sin(angle + i * math.pi / 3))
                               for i in range(6)], fill=tone)
        self.ball(x, y, r * 0.5, tones)
        if sealed:
            a = angle + 0.9
            self.draw.line([(x + r * 0.1 * math.cos(a), y + r * 0.1 * math.sin(a)),
                            (x + r * 1.75 * math.cos(a), y + r * 1.75 * math.sin(a))],
                           fill=sealed, width=max(4, int(r * 0.3)))

    def pencil(self, x, y, text, size=3, colour=(58, 58, 62), turn=0):
        """A few words in a plain hand; the face comes with the drawing library."""
        face = ImageFont.load_default()
        box = face.getbbox(text)
        small = Image.new("L", (box[2] + 2, box[3] + 2), 0)
        ImageDraw.Draw(small).text((1, 1), text, fill=255, font=face)
        large = small.resize((int(small.width * size), int(small.height * size)), Image.BICUBIC)
        large = large.rotate(turn, expand=True)
        self.image.paste(colour, (int(x), int(y)), large)

    # The camera

    def finished(self, size):
        """The picture as a hand-held camera sees it: a little askew, light falling off, grain."""
        r = self.rng
        small = (self.w // 3, self.h // 3)
        left, top = r.randrange(80), r.randrange(80)
        falloff = Image.radial_gradient("L").resize(
            small, Image.BILINEAR, (left, top, left + 170, top + 170)).point(lambda v: 255 - v // 3)
        grain = self._grain(small, 0.2)
        light = Image.blend(falloff, ImageChops.multiply(falloff, grain), 0.1)
        warm = ImageOps.colorize(light, (0, 0, 0), r.choice(
            ((255, 255, 255), (255, 249, 236), (246, 250, 255), (255, 244, 226))))
        bright = self.image.filter(ImageFilter.SMOOTH).point([min(255, v * 9 // 8 + 6) for v in range(256)] * 3)
        lit = ImageChops.multiply(bright, warm.resize((self.w, self.h), Image.BILINEAR))
        return lit.transform(size, Image.QUAD, self._viewfinder(), Image.BILINEAR)

    def _viewfinder(self):
        """What the camera sees of the picture: turned a little, nearer or farther, in it."""
        r = self.rng
        turn, zoom = math.radians(r.uniform(-5, 5)), r.uniform(0.74, 0.93)
        half_w, half_h = self.w / 2 * zoom, self.h / 2 * zoom
        reach_w = half_w * math.cos(turn) + half_h * abs(math.sin(turn))
        reach_h = half_h * math.cos(turn) + half_w * abs(math.sin(turn))
        shrink = min(1, self.w / 2 / reach_w, self.h / 2 / reach_h)
        half_w, half_h = half_w * shrink, half_h * shrink
        room_w, room_h = self.w / 2 - reach_w * shrink, self.h / 2 - reach_h * shrink
        x = self.w / 2 + r.uniform(-room_w, room_w)
        y = self.h / 2 + r.uniform(-room_h, room_h)
        if self.focus:
            dx, dy = self.focus[0] - x, self.focus[1] - y
            across = (dx * math.cos(turn) + dy * math.sin(turn)) / half_w
            down = (dy * math.cos(turn) - dx * math.sin(turn)) / half_h
            self.focus_seen = (round(0.5 + across / 2, 3), round(0.5 + down / 2, 3))
        corners = []
        for a, b in ((-1, -1), (-1, 1), (1, 1), (1, -1)):
            keystone = r.uniform(0.95, 1)
            dx, dy = a * half_w * keystone, b * half_h * keystone
            corners += [x + dx * math.cos(turn) - dy * math.sin(turn),
                        y + dx * math.sin(turn) + dy * math.cos(turn)]
        return corners
