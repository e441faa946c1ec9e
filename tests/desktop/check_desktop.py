#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Drives the real window with a real keyboard, and looks at the records through the terminal program.

    check_desktop.py DESKTOP_PROGRAM TERMINAL_PROGRAM

Needs Xvfb, a window manager, xdotool and pdftotext; without them it says so and is skipped (exit
code 77). Keys wait in the window's queue until it takes them, so nothing here sleeps for a guessed
time: each step ends when the records on disk, read by the terminal program, say so.
"""
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

SKIPPED = 77
TOOLS = ("Xvfb", "openbox", "xdotool", "pdftotext")
PATIENCE = 90  # seconds, for a machine that is busy
GLANCE = 5  # seconds until a key that found nothing to do is pressed again

DOCUMENT = {
    "format": "lastrivet-records", "version": 1, "hold_points_given": True,
    "project": {"name": "Keyboard", "profile": "plain", "builder_id": 90,
                "time_zone": "UTC", "currency": "EUR"},
    "people": [{"id": 90, "name": "Ada Holm", "roles": ["builder"]}],
    "components": [{"id": 1, "code": "LW", "name": "Left wing", "kind": "lifting_surface"}],
    "closings": [{"id": 20, "component_id": 1, "title": "Left wing box, lower skin",
                  "encloses": [1]}],
    "work_sessions": [{"id": 40, "began": "2026-01-05", "minutes": 60, "component_id": 1}],
}
SQUAWK = "overdriven rivet at rib 3"


class Failure(Exception):
    pass


def becomes(ask, seconds):
    """Asks again and again until the answer is true, and gives it; false when it never was."""
    end = time.monotonic() + seconds
    while True:
        answer = ask()
        if answer or time.monotonic() > end:
            return answer
        time.sleep(0.1)


def until(what, ask):
    answer = becomes(ask, PATIENCE)
    if not answer:
        raise Failure(f"waited in vain for {what}")
    return answer


class Desktop:
    """A screen with a window manager, and the program on a small project."""

    def __init__(self, folder, program, terminal):
        self.folder, self.program, self.terminal = folder, program, terminal
        self.project = folder / "Keyboard.lastrivet"
        self.running = []
        self.said = (folder / "said.txt").open("wb")
        self.environment = {**os.environ, "HOME": str(folder), "XDG_CONFIG_HOME": str(folder),
                            "XDG_RUNTIME_DIR": str(folder), "QT_QPA_PLATFORM": "xcb",
                            "LANG": "C.UTF-8", "LC_ALL": "C.UTF-8", "TZ": "UTC"}

    def start(self, *command, **more):
        process = subprocess.Popen([str(part) for part in command], env=self.environment,
                                   stdout=self.said, stderr=self.said, **more)
        self.running.append(process)
        return process

    def open(self):
        (self.folder / "Documents").mkdir()
        made = self.folder / "made-of.json"
        made.write_text(json.dumps(DOCUMENT))
        subprocess.run([self.terminal, "import", self.project, made, "--create"], check=True,
                       capture_output=True)
        read, write = os.pipe()
        # Without -noreset the screen starts anew whenever the last client of it has gone.
        self.start("Xvfb", "-displayfd", str(write), "-screen", "0", "1400x900x24", "-nolisten",
                   "tcp", "-noreset", pass_fds=[write])
        os.close(write)
        with os.fdopen(read) as number:
            self.environment["DISPLAY"] = ":" + number.readline().strip()
        self.start("openbox")
        until("the window manager", lambda: self.xdotool("get_num_desktops", check=False).strip())
        self.application = self.start(self.program, self.project)
        self.window = self.appeared("Keyboard")

    def appeared(self, name):
        """The window of this name, when keys go to it."""
        window = until(f"the window {name}", lambda: self.found(name))[0]
        until(f"the keyboard in {name}", lambda: self.has_keyboard(window))
        return window

    def found(self, name):
        if self.application.poll() is not None:
            raise Failure(f"the program ended with {self.application.returncode}")
        return self.xdotool("search", "--onlyvisible", "--name", name, check=False).split()

    def has_keyboard(self, window):
        if self.xdotool("getwindowfocus", check=False).strip() == window:
            return True
        self.xdotool("windowactivate", window, check=False)
        return False

    def close(self):
        for process in reversed(self.running):
            process.terminate()
            try:
                process.wait(10)
            except subprocess.TimeoutExpired:
                process.kill()
        self.said.close()

    def xdotool(self, *arguments, check=True):
        done = subprocess.run(["xdotool", *arguments], env=self.environment, capture_output=True,
                              text=True, timeout=PATIENCE, check=False)
        if check and done.returncode != 0:
            raise Failure(f"xdotool {arguments}: {done.stderr}")
        return done.stdout

    def press(self, *keys):
        for key in keys:
            self.xdotool("key", "--clearmodifiers", key)

    def write(self, text):
        self.xdotool("type", "--delay", "15", text)

    def find(self, words):
        """Writes into the finder and takes what it lists first."""
        self.press("ctrl+k")
        self.write(words)
        self.press("Return")

    def picture(self, name):
        """For whoever looks why it failed; nothing depends on it."""
        if shutil.which("import") and os.environ.get("LASTRIVET_DESKTOP_PICTURES"):
            place = Path(os.environ["LASTRIVET_DESKTOP_PICTURES"]) / f"{name}.png"
            subprocess.run(["import", "-window", "root", place], env=self.environment, check=False)

    def answer(self, verb):
        """What a verb of the terminal program says about the project."""
        done = subprocess.run([self.terminal, verb, self.project, "--json"], check=True,
                              capture_output=True, text=True)
        return json.loads(done.stdout)

    def squawks(self):
        return [squawk["title"] for squawk in self.answer("squawks")["squawks"]]


def logs_by_keyboard(desktop):
    desktop.press("ctrl+3")
    desktop.write("1h30 left wing: dimpled the lower skin")
    desktop.press("Return")
    until("the log entry", lambda: desktop.answer("hours")["total"]["minutes"] == 150)


def captures_a_squawk_from_another_page(desktop):
    desktop.press("ctrl+2", "ctrl+n")
    desktop.write("left wing: " + SQUAWK)
    desktop.press("Return")
    until("the squawk", lambda: desktop.squawks() == [SQUAWK])
    (closing,) = desktop.answer("ready")["closings"]
    held_by = [blocker["rule"] for blocker in closing["blockers"]]
    if "open-squawk" not in held_by:
        raise Failure(f"the open squawk does not hold the closing: {held_by}")


def undoes_and_redoes(desktop):
    desktop.press("Escape")
    desktop.find("undo")
    until("the squawk to be undone", lambda: desktop.squawks() == [])
    desktop.find("redo")
    until("the squawk to be back", lambda: desktop.squawks() == [SQUAWK])


def makes_a_packet(desktop):
    def made():
        return list(desktop.folder.joinpath("Documents").glob("*.pdf"))

    # The finder offers the button once the page shows the closing.
    def packets():
        desktop.find("wing box")
        desktop.find("make packet")
        desktop.press("ctrl+Return")
        desktop.picture("packet-form")
        return becomes(made, GLANCE)

    packet = until("the packet", packets)[0]
    text = subprocess.run(["pdftotext", packet, "-"], check=True, capture_output=True,
                          text=True).stdout
    for words in ("Left wing box, lower skin", SQUAWK, "dimpled the lower skin"):
        if words not in " ".join(text.split()):
            raise Failure(f"the packet does not say: {words}")


def quits_and_leaves_all_in_order(desktop):
    desktop.appeared("Keyboard")
    desktop.press("ctrl+q")
    if desktop.application.wait(PATIENCE) != 0:
        raise Failure(f"the program ended with {desktop.application.returncode}")
    findings = desktop.answer("verify")["findings"]
    if findings:
        raise Failure(f"the project has faults: {findings}")


STEPS = (logs_by_keyboard, captures_a_squawk_from_another_page, undoes_and_redoes,
         makes_a_packet, quits_and_leaves_all_in_order)


def main():
    missing = [tool for tool in TOOLS if not shutil.which(tool)]
    if missing:
        print("skipped: no", ", ".join(missing))
        return SKIPPED
    folder = Path(tempfile.mkdtemp(prefix="lastrivet-desktop-"))
    desktop = Desktop(folder, *sys.argv[1:3])
    try:
        desktop.open()
        for step in STEPS:
            print(step.__name__.replace("_", " "), flush=True)
            step(desktop)
            desktop.picture(step.__name__)
    except (Failure, subprocess.SubprocessError) as failure:
        desktop.picture("failed")
        print(f"failed: {failure}")
        print((folder / "said.txt").read_text(errors="replace"))
        return 1
    finally:
        desktop.close()
        shutil.rmtree(folder, ignore_errors=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
