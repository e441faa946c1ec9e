# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""The media rows: photographs and papers, with what they are linked to."""

import hashlib
import os
import random
from concurrent.futures import ProcessPoolExecutor
from datetime import datetime, timedelta, timezone
from zoneinfo import ZoneInfo

from demo import moments
from demo.drawing import camera, sheets
from demo.tables import rows

ZONE = ZoneInfo("America/Edmonton")
ORIENTATIONS = (1, 1, 6, 1, 3, 1, 6, 1, 8, 1)
BEFORE_THE_END = (4, 38)
POINTED_AT = {"wires": "grommet", "jam_nut": "jam nut", "bellcrank": "split pin"}
LAST_IMPORT = "2026-11-24T21:10"


class Papers:
    """The documents, known by the short keys of papers.txt."""

    def __init__(self, records):
        self._records = records
        self._rows = list(rows("papers.txt", 7))
        self._keys = [cells[0] for cells in self._rows]
        records.reserve("media", [("paper", key) for key in self._keys])

    def id_of(self, key):
        return self._records.id("media", ("paper", key)) if key else None

    def sheet_of(self, visit, closing):
        """The signed sheet that a signature stands on."""
        return self.id_of("S2b" if visit == "-" else f"S{visit[1:]}")

    def sheets_of_visit(self, visit):
        sheet = f"S{visit[1:]}"
        return [self.id_of(sheet)] if visit[0] == "V" and sheet in self._keys else []

    def card_of(self, tool, day):
        for key, _, _, dated, _, _, links in self._rows:
            if links == f"tool:{tool}" and dated == day:
                return self.id_of(key)
        return None

    def certificate_of(self, lot):
        for key, *_, links in self._rows:
            if links == f"material_lot:{lot}":
                return self.id_of(key)
        return None

    def write(self, folder):
        """Writes the files below `folder` and adds their rows."""
        (folder / "documents").mkdir(parents=True, exist_ok=True)
        for key, name, drawn, day, title, lines, links in self._rows:
            path = folder / "documents" / name
            size = self._draw(path, drawn, title, day, lines.split(" / "))
            shows = {"sheet": ["signed_sheet"], "receipt": ["receipt"]}.get(drawn)
            width, height = size or (None, None)
            self._records.add(
                "media", ("paper", key), kind="document", file=f"documents/{name}",
                **fingerprint(path), taken_on=day, imported_on=day, width=width, height=height,
                shows=shows, caption=title, links=_links(self._records, links.split()))

    def _draw(self, path, drawn, title, day, lines):
        if drawn == "pdf":
            path.write_bytes(sheets.pdf(title, day, lines))
            return None
        picture = getattr(sheets, drawn)(title, day, lines)
        picture.quantize(48).save(path, optimize=False)
        return picture.size


class Photographs:
    """The pictures of photos.txt, drawn anew each time."""

    def __init__(self, records, log):
        self._records = records
        self._log = log
        self._rng = random.Random(77)
        self._taken = set()
        self._shots = sorted(
            (self._shot(*cells) for cells in rows("photos.txt", 5)), key=lambda s: s["taken"])

    def add(self):
        """Adds the rows; files and hashes come with `write`."""
        for n, shot in enumerate(self._shots, 1):
            shot["file"] = f"photos/{shot['taken'][:10]}-{n:03d}-{shot['scene']}.jpg"
            shot["row"] = self._records.add(
                "media", ("photo", n), kind="photo", file=shot["file"], taken_on=shot["taken"],
                imported_on=self._imported(shot["taken"]), shows=shot["shows"],
                caption=shot["caption"], links=shot["links"])

    def at_work_on(self, codes):
        """The ids of pictures with the builder at work, linked to one of the parts."""
        parts = {("component", self._records.id("component", code)) for code in codes}
        return [shot["row"]["id"] for shot in self._shots if "builder_at_work" in shot["shows"]
                and parts & {(link["subject"], link["id"]) for link in shot["links"]}]

    def write(self, folder):
        (folder / "photos").mkdir(parents=True, exist_ok=True)
        orders = [(folder / s["file"], s["scene"], s["part"], n, s["size"], s["orientation"],
                   *_camera_clock(s["taken"], n)) for n, s in enumerate(self._shots)]
        with ProcessPoolExecutor(max_workers=os.cpu_count()) as pool:
            for shot, fields in zip(self._shots, pool.map(take, orders, chunksize=4)):
                shot["row"].update(fields)

    def _shot(self, when, scene, shows, caption, links):
        taken, kind, key = self._moment(when)
        named = links.split()
        part = next((n.partition(":")[2] for n in named if n.startswith("component:")), "")
        if kind:
            row = self._records.row(kind, key)
            own = [{"subject": kind, "id": row["id"]},
                   {"subject": "component", "id": row["component_id"]}]
            part = self._code(row["component_id"])
        else:
            own = []
        links = own + [link for link in _links(self._records, named) if link not in own]
        orientation = self._rng.choice(ORIENTATIONS)
        size = camera.PORTRAIT if orientation in (6, 8) else camera.LANDSCAPE
        return {"taken": taken, "scene": scene, "shows": sorted(shows.split()), "caption": caption,
                "links": links, "part": part, "orientation": orientation, "size": size}

    def _code(self, component):
        return next(row["code"] for row in self._records.all("component")
                    if row["id"] == component)

    def _moment(self, when):
        """A moment in the last minutes of the work it belongs to, and the record it shows."""
        word, _, key = when.partition(" ")
        if word[:2] == "20":
            return word, None, None
        kind, key = ("squawk", key) if word in ("found", "fixed") else ("step", word)
        row = self._records.row(kind, key)
        end = row["done_on"] if kind == "step" else row[f"{word}_on"]
        return self._free(moments.plus(end, -self._rng.randint(*BEFORE_THE_END))
                          if "T" in end else end + "T20:15"), kind, key

    def _free(self, moment):
        while moment in self._taken:
            moment = moments.plus(moment, 1)
        self._taken.add(moment)
        return moment

    def _imported(self, taken):
        """The telephone is emptied the same evening, or some days later."""
        return min(LAST_IMPORT, moments.plus(taken, self._rng.choice((95, 180, 1500, 4400))))


def take(order):
    """Draws and stores one picture; what the row says of the file."""
    path, scene, part, seed, size, orientation, clock, offset = order
    picture, focus = camera.draw(scene, part, seed, size)
    camera.write(path, picture, orientation, clock, offset)
    fields = {**fingerprint(path), "width": size[0], "height": size[1]}
    return {**fields, "annotations": [_arrow(scene, *focus)]} if focus else fields


def fingerprint(path):
    data = path.read_bytes()
    return {"sha256": hashlib.sha256(data).hexdigest(), "bytes": len(data)}


def _camera_clock(taken, n):
    """Most cameras write no offset; some write their own, and one keeps universal time."""
    local = datetime.fromisoformat(taken).replace(tzinfo=ZONE) + timedelta(seconds=n % 60)
    if n % 9 == 4:
        return local.astimezone(timezone.utc).strftime("%Y:%m:%d %H:%M:%S"), "+00:00"
    stamp = local.strftime("%Y:%m:%d %H:%M:%S")
    offset = local.strftime("%z")
    return stamp, f"{offset[:3]}:{offset[3:]}" if n % 3 == 0 else ""


def _links(records, names):
    links = []
    for name in names:
        subject, _, key = name.partition(":")
        links.append({"subject": subject, "id": records.id(subject, key)})
    return links


def _arrow(scene, x, y):
    """An arrow drawn beside the picture, from its tail to its tip, in parts of width and height."""
    tail = (round(x + (0.13 if x < 0.7 else -0.13), 3), round(y - 0.15, 3))
    return {"shape": "arrow", "points": [*tail, x, y], "text": POINTED_AT[scene]}
