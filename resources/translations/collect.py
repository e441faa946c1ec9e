#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Writes the English texts that are no tr() calls as a source that lupdate reads.

core knows no Qt: its sentences are patterns of Message, its words those of vocabularies and fields.
What is printed and the starter projects have patterns of their own.

    collect.py SOURCE_FOLDER OUTPUT.cpp
"""
import json
import re
import sys
from pathlib import Path

TOKEN = re.compile(
    r'//[^\n]*|/\*.*?\*/|R"(?P<d>[^(\s]*)\(.*?\)(?P=d)"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'', re.S)
# In these files every text is one that people read, single words too.
WORDS_TOO = {"core/packet/InWords.cpp", "core/records/KindNames.cpp", "core/records/Noun.cpp",
             "core/readiness/Ledger.cpp", "core/readiness/Names.cpp", "core/readiness/Sentences.cpp"}
# Developers' and machine texts: they stay English.
NOT_SAID = ("core/answers/", "core/profiles/",
            "core/airframe/KindOfAircraft.cpp", "core/airframe/PlaceWords.cpp",
            "core/evidence/ReadableName.cpp", "core/fasteners/SpokenWords.cpp")
# Of these people read on the screen only what they throw: the words of PDF, a text in English.
ONLY_THROWN = ("core/storage/ReadMe.cpp", "ui/print/PdfFinish.cpp")
# … but for what the window says of a project and of profiles by itself.
SAID = {"core/profiles/Citation.cpp", "core/profiles/ProfileDraft.cpp", "core/profiles/ProfileLibrary.cpp",
        "core/profiles/ProfileReader.cpp", "core/profiles/StrictJson.cpp"}
# Templates that say something.
HEADERS_TOO = ("core/project/Edit.h",)
MACHINE = re.compile(r"\bfmt::|spdlog::|logic_error|words\.find\(|static_assert|QStringLiteral|"
                     r"QLatin1String|QLatin1Char|#include")
THROWN = re.compile(r"\bthrow \w+\(\s*$")
# Faults that carry a Message.
THROWN_MESSAGE = re.compile(r"\bthrow \w+\(\s*(?:Message)?\s*\{\s*$")


def literals(source):
    """(the code before it in its statement, the code right behind it, its text) of each literal."""
    found, last_end, code, is_behind_text = [], 0, "", False
    for match in TOKEN.finditer(source):
        between = source[last_end:match.start()]
        last_end = match.end()
        token = match.group()
        code += between
        if token.startswith("/"):
            continue
        if not token.startswith('"'):
            code += " 0 "
            is_behind_text = False
            continue
        if is_behind_text and not between.strip():
            found[-1][1] = source[last_end:last_end + 60]
            found[-1][2] += token[1:-1]
            continue
        statement = re.split(r";|\breturn\b|\n\n", code)[-1]
        code += " text "
        is_behind_text = True
        found.append([statement, source[last_end:last_end + 60], token[1:-1]])
    return found


def is_sentence(text):
    if re.match(r"/|<<|PRAGMA|BEGIN|VACUUM|SQLite|TRIGGER|\\\\", text):
        return False
    return bool(re.search(r"\{\d\}", text) or re.search(r"[A-Za-z]{2}.* \S", text))


def core_patterns(root):
    for file in sorted((root / "core").rglob("*.cpp")) + [root / header for header in HEADERS_TOO]:
        name = file.relative_to(root).as_posix()
        if name.startswith(NOT_SAID) and name not in SAID:
            continue
        for before, behind, text in literals(file.read_text(encoding="utf-8")):
            is_said = (THROWN.search(before) and re.match(r"\)|,\s*Unchanged::", behind)
                       or THROWN_MESSAGE.search(before))
            if not is_said and ("throw" in before or name in ONLY_THROWN):
                continue
            if MACHINE.search(before) or "{}" in text or "{:" in text or text.startswith("/"):
                continue
            is_message = re.search(r"\{\s*$", before) and re.match(r"\s*,\s*\{", behind)
            is_word = name in WORDS_TOO and re.search(r"[a-z]", text)
            if is_sentence(text) or is_message or is_word:
                yield text


def printed_patterns(root):
    for file in sorted((root / "ui/print").rglob("*.cpp")):
        only_thrown = file.relative_to(root).as_posix().startswith(ONLY_THROWN)
        for before, behind, text in literals(file.read_text(encoding="utf-8")):
            if only_thrown and not THROWN_MESSAGE.search(before):
                continue
            # A character or a name put in front of text( says nothing of what is in it.
            near = re.sub(r"\s+", " ", before.rpartition("text(")[2])[-60:]
            if MACHINE.search(near) or "{}" in text or "{:" in text or text.startswith("/"):
                continue
            if re.search(r"[A-Za-z]", text) and ("text(" in before or is_sentence(text)):
                yield text


def vocabulary(root):
    for file in sorted((root / "core").rglob("*.h")):
        for body in re.findall(r"struct Words<[^>]*> \{(.*?)\n\};", file.read_text(), re.S):
            yield from re.findall(r'"([^"]+)"', body)


def field_names(root):
    for file in sorted((root / "core/records").glob("*.cpp")):
        yield from re.findall(r'[fF]ield<[^;"]*>\(\s*"([a-z_0-9]+)"', file.read_text())


WRAPPER = re.compile(
    r'QString (\w+)\(const char \*(\w+)(, (?:int|qsizetype|std::size_t) \w+(?: = [-\w]+)?)?\)\s*\{\s*'
    r'return QCoreApplication::translate\(\s*"(\w+)", \2')


def wrapped_texts(root):
    """(context, text) of free functions of a source that translate in a context of their own."""
    for file in sorted((root / "ui").rglob("*.cpp")):
        source = file.read_text(encoding="utf-8")
        for name, _, count, context in WRAPPER.findall(source):
            call = re.compile(rf"\b{name}\(\s*$")
            for before, behind, text in literals(source):
                if call.search(before):
                    yield context, text, "%n" in text


def starter_texts(root):
    def texts(value):
        if isinstance(value, dict):
            for key, part in value.items():
                if isinstance(part, str):
                    if key in ("title", "name", "zone", "item", "method"):
                        yield part
                else:
                    yield from texts(part)
        elif isinstance(value, list):
            for part in value:
                yield from [part] if isinstance(part, str) and " " in part else texts(part)

    for file in sorted((root / "resources/starters").glob("*.json")):
        for text in texts(json.loads(file.read_text(encoding="utf-8"))):
            yield text.replace("\\", "\\\\").replace('"', '\\"')


def caution_texts(root):
    """The cautions of the profiles that come with the program; a paper looks them up by their text."""
    for file in sorted((root / "resources/profiles").glob("*.json")):
        for caution in json.loads(file.read_text(encoding="utf-8"))["cautions"]:
            yield caution["text"].replace("\\", "\\\\").replace('"', '\\"')


def checklist_texts(root):
    """The lines of the inspector's lists of the profiles; a paper looks them up by their text."""
    for file in sorted((root / "resources/profiles").glob("*.json")):
        for checklist in json.loads(file.read_text(encoding="utf-8"))["checklists"]:
            for line in checklist["items"]:
                yield line["item"].replace("\\", "\\\\").replace('"', '\\"')


def certificate_texts(root):
    """What the profiles call the papers of a certificate and say of when they are due, and their test
    periods; page and paper look them up by their text."""
    for file in sorted((root / "resources/profiles").glob("*.json")):
        profile = json.loads(file.read_text(encoding="utf-8"))
        texts = [text for document in profile["documents"]
                 for text in (document["title"], document["key"].replace("_", " "),
                              document.get("when"))]
        texts += [text for period in profile["test_period"]
                  for text in (period["applies_to"], period["text"])]
        for text in filter(None, texts):
            yield text.replace("\\", "\\\\").replace('"', '\\"')


def quoted_texts(root):
    """How the profiles count the major portion, and what they name as source where there is no document;
    a paper looks them up by their text."""
    marks = {"second-hand": " [second-hand]", "memory": " [from memory]"}
    for file in sorted((root / "resources/profiles").glob("*.json")):
        profile = json.loads(file.read_text(encoding="utf-8"))
        texts = [rule["text"] for rule in profile["credit"]["rules"]]
        for source in profile["sources"]:
            if source["id"].startswith("trade-"):
                texts += [source["title"], source["title"] + marks[source["mark"]]]
        for text in texts:
            yield text.replace("\\", "\\\\").replace('"', '\\"')


def credit_texts(root):
    whole = json.loads((root / "resources/credit/tasks.json").read_text(encoding="utf-8"))
    for kind in whole["classes"]:
        yield kind["title"]
        for section in kind["sections"]:
            yield from [section["title"], *section["tasks"]]


def main():
    root, output = Path(sys.argv[1]), Path(sys.argv[2])
    groups = {"Message": sorted(set(core_patterns(root)) | set(printed_patterns(root))
                                | set(caution_texts(root)) | set(checklist_texts(root))
                                | set(certificate_texts(root)) | set(quoted_texts(root))),
              "Word": sorted(set(vocabulary(root))),
              "FieldName": sorted(set(field_names(root))),
              "Starter": sorted(set(starter_texts(root)) | set(credit_texts(root)))}
    lines = ["// Made by resources/translations/collect.py; read by lupdate, never compiled."]
    for context, texts in groups.items():
        lines += [f'QT_TRANSLATE_NOOP("{context}", "{text}"),' for text in texts]
    for context, text, is_counted in sorted(set(wrapped_texts(root))):
        lines.append(f'QT_TRANSLATE_N_NOOP("{context}", "{text}"),' if is_counted
                     else f'QT_TRANSLATE_NOOP("{context}", "{text}"),')
    output.parent.mkdir(parents=True, exist_ok=True)
    output.write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
