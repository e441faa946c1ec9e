#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Takes what is to translate out of a .ts file as a list, and puts the translated list back.

    fill.py FILE.ts --missing > missing.json   every text that has no translation yet
    fill.py FILE.ts missing.json               writes those that are filled in

An entry is {"context": …, "source": …, "translation": …}; the translation of a text with %n is a list,
singular first, and has %Ln in its place, which parts thousands. Entries that are still empty stay as
they are. One whose places for values differ from its source's is refused.
"""
import json
import re
import sys
from pathlib import Path
from xml.sax.saxutils import escape, unescape

import refresh

MESSAGE = re.compile(r"(    <message(?P<plural> numerus=\"yes\")?>\n.*?    </message>\n)", re.S)
ENTITIES = {"&apos;": "'", "&quot;": '"'}


def plain(text):
    return unescape(text, ENTITIES)


def written(text):
    return escape(text, {'"': "&quot;", "'": "&apos;"})


def source_of(message):
    found = re.search(r"<source>(.*?)</source>", message, re.S)
    return plain(found.group(1)) if found else ""


def contexts(text):
    """(name, body) of every context."""
    for context in re.finditer(r"<context>\n    <name>(.*?)</name>\n(.*?)</context>", text, re.S):
        yield plain(context.group(1)), context.group(2)


def untranslated(file):
    entries = []
    for name, body in contexts(file.read_text(encoding="utf-8")):
        for message in MESSAGE.finditer(body):
            if 'type="unfinished"' not in message.group(1):
                continue
            empty = ["", ""] if message.group("plural") else ""
            entries.append({"context": name, "source": source_of(message.group(1)),
                            "translation": empty})
    return entries


def is_filled(translation):
    return all(translation) if isinstance(translation, list) else bool(translation)


def complaint(entry):
    """What is wrong with a translation, or nothing."""
    forms = entry["translation"]
    for form in forms if isinstance(forms, list) else [forms]:
        if sorted(refresh.PLACE.findall(entry["source"])) != sorted(refresh.PLACE.findall(form)):
            return "other places for values"
    return None


def put(message, translation):
    if isinstance(translation, list):
        forms = "".join(f"            <numerusform>{written(form)}</numerusform>\n"
                        for form in translation)
        filled = f"<translation>\n{forms}        </translation>"
    else:
        filled = f"<translation>{written(translation)}</translation>"
    return re.sub(r"<translation[^>]*?(?:/>|>.*?</translation>)", lambda _: filled, message,
                  flags=re.S)


def fill(file, entries):
    wanted, refused = {}, 0
    for entry in entries:
        if not is_filled(entry["translation"]):
            continue
        wrong = complaint(entry)
        if wrong:
            print(f"{wrong}: {entry['source']} → {entry['translation']}", file=sys.stderr)
            refused += 1
        else:
            wanted[entry["context"], entry["source"]] = entry["translation"]

    def in_context(match):
        name = plain(match.group(1))

        def one(message):
            translation = wanted.get((name, source_of(message.group(1))))
            return put(message.group(1), translation) if translation else message.group(1)

        return f"<context>\n    <name>{match.group(1)}</name>\n" + MESSAGE.sub(
            one, match.group(2)) + "</context>"

    text = file.read_text(encoding="utf-8")
    file.write_text(re.sub(r"<context>\n    <name>(.*?)</name>\n(.*?)</context>", in_context, text,
                           flags=re.S), encoding="utf-8")
    print(f"{len(wanted)} filled in, {refused} refused, {len(untranslated(file))} left")
    return 1 if refused else 0


def main():
    file = Path(sys.argv[1])
    if sys.argv[2] == "--missing":
        json.dump(untranslated(file), sys.stdout, ensure_ascii=False, indent=1)
        return 0
    return fill(file, json.loads(Path(sys.argv[2]).read_text(encoding="utf-8")))


if __name__ == "__main__":
    sys.exit(main())
