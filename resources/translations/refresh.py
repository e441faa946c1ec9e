#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Brings the .ts files up to date with the sources, and says what each still lacks.

    refresh.py SOURCE_FOLDER            rewrites resources/translations/*.ts
    refresh.py SOURCE_FOLDER --check    changes nothing; fails when a text of the sources is in no .ts
                                        file, or a translation has other places for values, or a French
                                        one a space at which a line could end before : ; ! ? »

lupdate is found in $LUPDATE, on the path, or where Debian keeps Qt 6's tools.
"""
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml
from pathlib import Path

import collect

NAMESPACE = re.compile(r"Class 'lastrivet(::[a-z]+)*' lacks Q_OBJECT")
LANGUAGES = {"de": "de_DE", "fr": "fr_FR", "en": "en_US"}


def lupdate():
    return (os.environ.get("LUPDATE") or shutil.which("lupdate6")
            or "/usr/lib/qt6/bin/lupdate")


def refresh(root, folder):
    """lupdate over ui, app and the collected texts, into the .ts files of the folder."""
    with tempfile.TemporaryDirectory() as made:
        collected = Path(made) / "Collected.cpp"
        sys.argv = ["collect.py", str(root), str(collected)]
        collect.main()
        warnings = set()
        for language, name in LANGUAGES.items():
            options = ["-pluralonly"] if language == "en" else []
            run = subprocess.run(
                [lupdate(), "-silent", "-I", str(root), "-locations", "none", "-no-obsolete", *options,
                 # Guesses from other texts would be shown as if somebody had translated them.
                 "-disable-heuristic", "sametext", "-disable-heuristic", "similartext",
                 "-disable-heuristic", "number",
                 "-source-language", "en", "-target-language", name, "-extensions", "cpp,h",
                 str(root / "ui"), str(root / "app"), str(collected),
                 "-ts", str(folder / f"lastrivet_{language}.ts")],
                check=True, capture_output=True, text=True)
            warnings |= {line for line in run.stderr.splitlines() if line.strip()}
            drop_wrappers(folder / f"lastrivet_{language}.ts")
    french = folder / "lastrivet_fr.ts"
    french.write_text(held_together(french.read_text(encoding="utf-8")), encoding="utf-8")
    return sorted(line for line in warnings if not NAMESPACE.search(line))


def drop_wrappers(file):
    """A free function tr() translates in a context of its own, which the collected texts have."""
    written = file.read_text(encoding="utf-8")
    file.write_text(re.sub(
        r"<context>\n    <name>lastrivet(::[a-z]+)*</name>.*?</context>\n", "", written,
        flags=re.S), encoding="utf-8")


def held_together(french):
    """The .ts file with spaces that do not break, as lupdate writes them, before : ; ! ? » and after «."""
    def hold(found):
        return re.sub(r"(?<=\S) (?=[:;!?»])|(?<=«) |\N{NO-BREAK SPACE}", "&#xa0;", found.group())
    return re.sub(r"<(translation|numerusform)>.*?</\1>", hold, french, flags=re.S)


def texts(file):
    """(context, source, comment) of every message of a .ts file, and whether it is finished."""
    found = {}
    for context in xml.parse(file).getroot().iter("context"):
        for message in context.iter("message"):
            translation = message.find("translation")
            key = (context.findtext("name"), message.findtext("source"), message.findtext("comment"))
            found[key] = translation.get("type") is None
    return found


PLACE = re.compile(r"%L?\d|\{\d\}|</?[a-z]+>")


def misplaced(file):
    """Every finished translation whose places for values or mnemonics differ from its source's, or
    that writes a count as %n."""
    for message in xml.parse(file).getroot().iter("message"):
        source, translation = message.findtext("source"), message.find("translation")
        if translation.get("type") is not None:
            continue
        for text in [form.text or "" for form in translation.iter("numerusform")] or [
                translation.text or ""]:
            if sorted(PLACE.findall(source)) != sorted(PLACE.findall(text)):
                yield source, text
            # A count with thousands is written as the language writes it.
            elif "%n" in text or ("%Ln" in text) > ("%n" in source) or not text.strip():
                yield source, text
            elif (" & " not in source) and source.count("&") != text.count("&"):
                yield source, text


def report(folder):
    for language in LANGUAGES:
        states = texts(folder / f"lastrivet_{language}.ts")
        print(f"{language}: {len(states)} texts, {list(states.values()).count(False)} to translate")


def check(root, folder):
    with tempfile.TemporaryDirectory() as made:
        for language in LANGUAGES:
            shutil.copy(folder / f"lastrivet_{language}.ts", made)
        refresh(root, Path(made))
        missing = 0
        for language in LANGUAGES:
            have = texts(folder / f"lastrivet_{language}.ts")
            want = texts(Path(made) / f"lastrivet_{language}.ts")
            for context, source, _ in sorted(want.keys() - have.keys(), key=str):
                print(f"{language}: not in the .ts file: {context}: {source}")
                missing += 1
            for source, text in misplaced(folder / f"lastrivet_{language}.ts"):
                print(f"{language}: other places than in the source: {source} → {text}")
                missing += 1
            for context, source, _ in sorted(have.keys() - want.keys(), key=str):
                print(f"{language}: said nowhere any more: {context}: {source}")
                missing += 1
        french = (folder / "lastrivet_fr.ts").read_text(encoding="utf-8")
        if held_together(french) != french:
            print("fr: spaces that may break before a sign or inside « »")
            missing += 1
        if missing:
            print("`python3 resources/translations/refresh.py .` mends that; then translate what is new.")
        return 1 if missing else 0


def main():
    root = Path(sys.argv[1]).resolve()
    folder = root / "resources/translations"
    if "--check" in sys.argv[2:]:
        result = check(root, folder)
        report(folder)
        return result
    print("\n".join(refresh(root, folder)))
    report(folder)
    return 0


if __name__ == "__main__":
    sys.exit(main())
