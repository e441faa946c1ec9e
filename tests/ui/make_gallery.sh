#!/bin/bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# make_gallery.sh GALLERY TERMINAL SOURCE FOLDER: a picture of every page and dialog in light and
# dark, at twice the size, in German and French, with the demo and with an empty project.
# What is cut is said on the way and written beside the pictures.
set -euo pipefail

gallery=$1 terminal=$2 source=$3 folder=$4
export QT_QPA_PLATFORM=offscreen
mkdir -p "$folder"
making=$(mktemp -d)
trap 'rm -rf "$making"' EXIT

python3 "$source/sample-data/make_demo.py" "$making/data"
"$terminal" import "$making/Demo.lastrivet" "$making/data/demo.json" --create
"$terminal" new "$making/Empty.lastrivet" --name "Nothing yet" --profile ca --who "Robin Vale"
# The evening after the demo's last entries.
day=2026-11-25

for project in Demo Empty; do
    for look in light dark; do
        for language in en de fr; do
            "$gallery" "$making/$project.lastrivet" "$folder/$project-$look-$language" 1280 720 \
                "$look" "$day" "$language" 2>&1 | tee "$folder/$project-$look-$language.cut.txt"
        done
    done
    QT_SCALE_FACTOR=2 "$gallery" "$making/$project.lastrivet" "$folder/$project-200" 1280 720 \
        light "$day" en
done
