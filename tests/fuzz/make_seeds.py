#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Makes a folder of first inputs for each fuzz target out of the project's own samples.

    make_seeds.py SOURCE LASTRIVET_CLI FOLDER
"""
import json
import sqlite3
import subprocess
import sys
from pathlib import Path

# The seeds of the targets that read one line.
LINES = {
    "entry_line": ["2h15 left wing: dimpled both skins", "LW-R3 1:30 yesterday with Hans: riveted",
                   "9:15-11:30 tail + LW-T: sealed, done 12-3", "45m 3 Mar 2026 squawk 1: drilled",
                   "1,5 Std gestern linker Flügel: genietet", "30 LW at 9:15; rest T"],
    "squawk_line": ["left wing: overdriven rivet at the third hinge", "LW-R3, airworthiness: crack",
                    "1. rib 3: burr\n2) tail: loose nut\n(12b) No. 3 chafed wire\n#4 – gap",
                    "yesterday: drain hole blocked"],
    "search": ["left wing", "overdri", '"rib" OR tail*', "title : (rib) NEAR -x",
               "lastrivet:component:2", "Flügel^2 {a b}"],
    "exif_time": ["2026:03:14 15:23:45\n+01:00", "2026:02:30 24:00:00\n-12:00",
                  "0000:00:00 00:00:00\n+14:00", "    :  :     :  :  \n"],
    "file_name": ["photos/2026/a.jpg", "../../etc/passwd", "/etc/passwd", "l/x", "photos/u/../a",
                  "photos\\..\\a", "photos//a.jpg", "Flügel.pdf", "records.db"],
    "database_statements": [
        "UPDATE component SET parent_id=id",
        "CREATE TRIGGER t AFTER INSERT ON person BEGIN DELETE FROM squawk; END",
        "PRAGMA writable_schema=ON; UPDATE sqlite_schema SET sql='' WHERE name='media'",
        "PRAGMA foreign_keys=OFF; DELETE FROM person; UPDATE squawk SET component_id=99",
        "UPDATE media SET file='../../etc/passwd', sha256=NULL",
        "UPDATE project SET time_zone='x', profile='../x'; DELETE FROM profile_copy",
        "INSERT INTO local_state VALUES ('timer', '2026-03-14T10:00 1 2 3')",
        "DROP TRIGGER journal_is_never_changed; UPDATE journal SET changeset=x'5404', stamp=-1",
        "UPDATE search_data SET block=x'00'; INSERT INTO search(search) VALUES ('rebuild')",
        "UPDATE work_session SET minutes=9223372036854775807, began='2026-02-30'",
        "PRAGMA user_version=0", "CREATE VIEW v AS SELECT 1; DROP TABLE local_state",
    ],
}
# The kinds of rows, as the first byte of the target `csv` chooses them, and the order of days.
LISTS = {
    b"da": "code,name,part,kind\nLW-R4,Rib 4,LW,part\nX,\"a, b\",,\n",
    b"aa": "step;part;estimate minutes;after\nRivet;LW;2h15;\nDrill;T;90;\"1;2\"\n",
    b"cb": "date,part,minutes,workers,note\n14.3.2026,LW,1:30,Hans Helper,'=1+1\n",
    b"bc": "part\tname\tqty\tunit\n\tAN3-5A\t12\teach\nLW\tNut\t1\t\n",
}
# Places in the first pages of a database, and what a flipped bit could make of them.
PLACES = [(16, 2), (18, 1), (21, 64), (28, 0), (44, 9), (60, 0), (68, 0), (100, 13), (103, 255),
          (108, 255), (512, 0), (517, 255), (1024, 2), (4096, 5), (20000, 13), (60000, 255)]


def save(folder, target, inputs):
    place = folder / target
    place.mkdir(parents=True, exist_ok=True)
    for number, content in enumerate(inputs):
        (place / f"seed-{number:02}").write_bytes(content)


def documents(source):
    for file in sorted((source / "tests/reference/cases").glob("*.json")):
        yield json.dumps(json.loads(file.read_text())["document"]).encode()


def changesets(source, cli, folder):
    """The journal of a project that one of the sample documents was imported into."""
    project, document = folder / "Seeds.lastrivet", folder / "document.json"
    for number, content in enumerate(documents(source)):
        if number % 8:
            continue
        document.write_bytes(content)
        subprocess.run(["rm", "-rf", project], check=True)
        subprocess.run([cli, "import", "--create", project, document], check=True,
                       stdout=subprocess.DEVNULL)
        with sqlite3.connect(project / "records.db") as records:
            yield from (row[0] for row in records.execute(
                "SELECT changeset FROM journal WHERE changeset NOT NULL"))


def main(source, cli, folder):
    for target, lines in LINES.items():
        save(folder, target, [line.encode() for line in lines])
    save(folder, "csv", [first + rows.encode() for first, rows in LISTS.items()])
    save(folder, "document", documents(source))
    save(folder, "profile", [file.read_bytes() for kind in ("profiles", "starters")
                             for file in sorted((source / "resources" / kind).glob("*.json"))])
    save(folder, "database_bytes", [place.to_bytes(3, "big") + bytes([value])
                                    for place, value in PLACES])
    pictures = folder / "pictures"
    pictures.mkdir(exist_ok=True)
    subprocess.run([sys.executable, source / "tests/support/make_pictures.py", pictures],
                   check=True)
    save(folder, "picture", [file.read_bytes() for file in sorted(pictures.iterdir())
                             if file.suffix in (".jpg", ".png") and file.stat().st_size < 20_000])
    save(folder, "changeset", changesets(source, cli, folder))


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2], Path(sys.argv[3]))
