#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints the sources over 400 lines and the functions over 40, longest first, and the sources and
tests that no CMakeLists.txt lists, which are never built.

    check_style.py [FOLDER…]

Of tests only the lines of files count. Reads braces, not C++: a function is a block that a line
ending in `)`, `const`, `override` or `noexcept` opens at the outermost level, or one level below a
class. Ends with 1 when it found any.
"""
import re
import sys
from pathlib import Path

MOST_LINES_OF_FILE = 400
MOST_LINES_OF_FUNCTION = 40
SOURCE = Path(__file__).resolve().parent.parent
BUILT = ("app", "core", "tests", "ui")
NOT_CODE = re.compile(r'R"(\w*)\(.*?\)\1"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'|//[^\n]*|/\*.*?\*/',
                      re.DOTALL)
LISTED = re.compile(r"[\w./${}-]+\.cpp\b")
GROUP = re.compile(r"\b(namespace|class|struct|union|enum|extern)\b(?!.*\()")


def without_texts(source):
    """The same lines, with strings and comments blanked."""
    return NOT_CODE.sub(lambda found: re.sub(r"[^\n]", " ", found.group()), source)


def functions(code):
    """The (first line, lines) of each outermost block that is no namespace or type."""
    opened = []  # of each brace: its line, and whether it opens a namespace or type
    head, line, head_line = "", 1, 1
    for sign in code:
        line += sign == "\n"
        if sign == "{":
            opened.append((head_line, bool(GROUP.search(head)), ")" in head))
        elif sign == "}" and opened:
            first, is_group, has_arguments = opened.pop()
            if has_arguments and not is_group and all(outer[1] for outer in opened):
                yield first, line - first + 1
        if sign in "{};":
            head = ""
        elif head or not sign.isspace():
            head_line = head_line if head else line
            head += " " if sign == "\n" else sign


def findings(file):
    source = file.read_text()
    lines = source.count("\n")
    if lines > MOST_LINES_OF_FILE:
        yield lines, f"{file}: {lines} lines"
    # A test is one story, and may be as long as that is.
    is_test = SOURCE / "tests" in file.parents
    for first, length in [] if is_test else functions(without_texts(source)):
        if length > MOST_LINES_OF_FUNCTION:
            yield length, f"{file}:{first}: a function of {length} lines"


def listed():
    """Every source that a CMakeLists.txt names, by its place."""
    for folder in BUILT:
        for listing in (SOURCE / folder).rglob("CMakeLists.txt"):
            for name in LISTED.findall(listing.read_text()):
                place = name.replace("${PROJECT_SOURCE_DIR}", str(SOURCE))
                place = place.replace("${CMAKE_CURRENT_SOURCE_DIR}/", "")
                yield (listing.parent / place).resolve()


def unlisted():
    built = set(listed())
    for folder in BUILT:
        yield from sorted(set((SOURCE / folder).rglob("*.cpp")) - built)


def main():
    folders = [Path(name) for name in sys.argv[1:]] or [
        SOURCE / name for name in ("core", "ui", "app", "tests")]
    files = sorted(file for folder in folders for file in folder.rglob("*")
                   if file.suffix in (".cpp", ".h"))
    found = sorted((found for file in files for found in findings(file)), reverse=True)
    for _, words in found:
        print(words)
    lost = list(unlisted())
    for file in lost:
        print(f"{file}: no CMakeLists.txt lists it")
    print(f"{len(files)} files, {len(found) + len(lost)} findings")
    return 1 if found or lost else 0


if __name__ == "__main__":
    sys.exit(main())
