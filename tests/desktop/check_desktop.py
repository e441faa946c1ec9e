#!/usr/bin/env python3
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
"""Drives the real window with a real keyboard, and looks at the records through the terminal program.

    check_desktop.py DESKTOP_PROGRAM TERMINAL_PROGRAM

Needs Xvfb, a window manager and xdotool; without them it says so and is skipped (exit code 77).
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
TOOLS = ("Xvfb", "openbox", "xdotool")
PATIENCE = 60  # seconds, for a machine that is busy

DOCUMENT = {
    "format": "lastrivet-records", "version": 1, "hold_points_given": True,
    "project": {"name": "Keyboard", "profile": "plain", "builder_id": 90,
                "time_zone": "UTC", "currency": "EUR"},
    "people": [{"id": 90, "name": "Ada Holm", "roles": ["builder"]}],
    "components": [{"id": 1, "code": "LW", "name": "Left wing", "kind": "lifting_surface"}],
    "closings": [{"id": 20, "component_id": 1, "title": "Left wing, lower skin",
                  "encloses": [1]}],
    "work_sessions": [{"id": 40, "began": "2026-01-05", "minutes": 60, "component_id": 1}],
}


class Failure(Exception):
    pass


def until(what, ask):
    """Asks again and again until the answer is true."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        answer = ask()
        if answer:
            return answer
        time.sleep(0.2)
    raise Failure(f"waited in vain for {what}")


class Desktop:
    """A screen with a window manager, and the program on a small project."""

    def __init__(self, folder, program, terminal):
        self.folder, self.program, self.terminal = folder, program, terminal
        self.project = folder / "Keyboard.lastrivet"
        self.running = []
        self.environment = {**os.environ, "HOME": str(folder), "XDG_CONFIG_HOME": str(folder),
                            "XDG_RUNTIME_DIR": str(folder), "QT_QPA_PLATFORM": "xcb",
                            "LANG": "C.UTF-8", "LC_ALL": "C.UTF-8", "TZ": "UTC"}

    def start(self, *command, **more):
        process = subprocess.Popen([str(part) for part in command], env=self.environment,
                                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, **more)
        self.running.append(process)
        return process

    def open(self):
        made = self.folder / "made-of.json"
        made.write_text(json.dumps(DOCUMENT))
        subprocess.run([self.terminal, "import", self.project, made, "--create"], check=True,
                       capture_output=True)
        read, write = os.pipe()
        self.start("Xvfb", "-displayfd", str(write), "-screen", "0", "1400x900x24", "-nolisten",
                   "tcp", pass_fds=[write])
        os.close(write)
        with os.fdopen(read) as number:
            self.environment["DISPLAY"] = ":" + number.readline().strip()
        self.start("openbox")
        self.start(self.program, self.project)
        self.window = until("the window", lambda: self.xdotool(
            "search", "--onlyvisible", "--name", "Keyboard", check=False).split())[0]
        self.xdotool("windowactivate", "--sync", self.window, check=False)

    def close(self):
        for process in reversed(self.running):
            process.terminate()
            try:
                process.wait(10)
            except subprocess.TimeoutExpired:
                process.kill()

    def xdotool(self, *arguments, check=True):
        done = subprocess.run(["xdotool", *arguments], env=self.environment, capture_output=True,
                              text=True, timeout=PATIENCE, check=False)
        if check and done.returncode != 0:
            raise Failure(f"xdotool {arguments}: {done.stderr}")
        return done.stdout

    def press(self, *keys):
        for key in keys:
            self.xdotool("key", "--clearmodifiers", key)
            time.sleep(0.3)

    def write(self, text):
        self.xdotool("type", "--delay", "15", text)
        time.sleep(0.3)

    def picture(self, name):
        """For whoever looks why it failed; nothing depends on it."""
        if shutil.which("import") and os.environ.get("LASTRIVET_DESKTOP_PICTURES"):
            place = Path(os.environ["LASTRIVET_DESKTOP_PICTURES"]) / f"{name}.png"
            subprocess.run(["import", "-window", "root", place], env=self.environment, check=False)

    def answer(self, *arguments):
        done = subprocess.run([self.terminal, *map(str, arguments)], capture_output=True,
                              text=True, check=False)
        return json.loads(done.stdout) if done.returncode == 0 else None


def minutes_of_left_wing(desktop):
    document = exported(desktop)
    return sum(session.get("minutes", 0) for session in document["work_sessions"])


def exported(desktop):
    place = desktop.folder / "export.json"
    place.unlink(missing_ok=True)
    subprocess.run([desktop.terminal, "export", desktop.project, "--to", place], check=True,
                   capture_output=True)
    return json.loads(place.read_text())


def logs_by_keyboard(desktop):
    desktop.press("ctrl+3")
    desktop.write("1h30 left wing: dimpled the lower skin")
    desktop.press("Return")
    until("the log entry", lambda: minutes_of_left_wing(desktop) == 150)


def captures_a_squawk(desktop):
    desktop.press("ctrl+n")
    desktop.write("left wing: overdriven rivet at rib 3")
    desktop.press("Return")
    until("the squawk", lambda: [squawk for squawk in exported(desktop).get("squawks", [])
                                 if "verdriven rivet" in squawk["title"]])


def undoes_and_redoes(desktop):
    desktop.press("Escape", "ctrl+3", "Escape")
    def count():
        return len([squawk for squawk in exported(desktop).get("squawks", [])])
    desktop.press("ctrl+k")
    desktop.write("undo")
    desktop.press("Return")
    until("the squawk to be undone", lambda: count() == 0)
    desktop.press("ctrl+k")
    desktop.write("redo")
    desktop.press("Return")
    until("the squawk to be back", lambda: count() == 1)


def makes_a_packet(desktop):
    packet = desktop.folder / "packet.pdf"
    desktop.press("ctrl+k")
    desktop.write("left wing, lower skin")
    desktop.press("Return")
    time.sleep(1)
    desktop.picture("closing")
    desktop.press("ctrl+k")
    desktop.write("make packet")
    desktop.press("Return")
    until("the file dialog", lambda: len(desktop.xdotool(
        "search", "--onlyvisible", "--name", "acket", check=False).split()) > 0)
    desktop.press("ctrl+a")
    desktop.write(str(packet))
    desktop.press("Return")
    until("the packet", packet.exists)
    head = packet.read_bytes()[:5]
    if head != b"%PDF-":
        raise Failure(f"the packet begins with {head}")


def main():
    missing = [tool for tool in TOOLS if not shutil.which(tool)]
    if missing:
        print("skipped: no", ", ".join(missing))
        return SKIPPED
    folder = Path(tempfile.mkdtemp(prefix="lastrivet-desktop-"))
    desktop = Desktop(folder, *sys.argv[1:3])
    try:
        desktop.open()
        time.sleep(1)
        for step in (logs_by_keyboard, captures_a_squawk, undoes_and_redoes, makes_a_packet):
            print(step.__name__.replace("_", " "), flush=True)
            step(desktop)
            desktop.picture(step.__name__)
    except (Failure, subprocess.SubprocessError) as failure:
        desktop.picture("failed")
        print(f"failed: {failure}")
        return 1
    finally:
        desktop.close()
        shutil.rmtree(folder, ignore_errors=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
