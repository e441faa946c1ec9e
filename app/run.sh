#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Builds Lastrivet, makes the demo project once, and opens it. Without a display it answers in the
# terminal: what must stay open, and an inspection packet as PDF.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source resources/setup.sh

programs=build/release/app
project=build/demo/Demo.lastrivet

# Made beside its place and moved there when whole, so that an interrupted run leaves no half demo.
# The drawing library is a package of Debian, so it is Debian's interpreter that draws.
make_demo() {
    local making=build/demo/making.lastrivet
    [ -d "$project" ] && return
    say "Making the demo project in $project"
    rm -rf "$making"
    mkdir -p build/demo
    /usr/bin/python3 sample-data/make_demo.py build/demo-data
    "$programs/lastrivet-cli" import "$making" build/demo-data/demo.json --create
    mv "$making" "$project"
}

# The closings that wait for the inspector, or when none does, the first of all.
closings_to_show() {
    "$programs/lastrivet-cli" ready "$project" --json | python3 -c '
import json, sys
closings = json.load(sys.stdin)["closings"]
waiting = [c["id"] for c in closings if c["state"] == "ready_to_inspect"]
print(*(waiting or [c["id"] for c in closings[:1]]))'
}

show_in_terminal() {
    local closings
    say "No display: this is what must stay open, and why"
    "$programs/lastrivet-cli" ready "$project"
    read -r -a closings < <(closings_to_show)
    "$programs/lastrivet-cli" packet "$project" --closing "${closings[@]}" --to build/demo/packet.pdf
    say "The inspection packet is build/demo/packet.pdf; the project is $project"
    say "More: $programs/lastrivet-cli --help"
}

install_missing build run
build_preset release
make_demo
if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec "$programs/lastrivet" "$project"
fi
show_in_terminal
