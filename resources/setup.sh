# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Sourced by app/run.sh and tests/run.sh from the top of the source tree, under `set -euo pipefail`.

say() {
    printf '== %s\n' "$*"
}

fail() {
    printf 'lastrivet: %s\n' "$*" >&2
    exit 1
}

# packages_of SECTION…: the packages of these sections of the list.
packages_of() {
    local section
    for section in "$@"; do
        awk -v wanted="# $section" '/^#/ { within = ($0 == wanted) } /^[^#]/ { if (within) print $1 }' \
            resources/debian-packages.txt
    done
}

# missing_of PACKAGE…: those that are not installed.
missing_of() {
    local installed
    installed=$(dpkg-query -W -f='${db:Status-Status} ${Package}\n' "$@" 2>/dev/null |
        sed -n 's/^installed //p') || true
    printf '%s\n' "$@" | grep -vxF -f <(printf '%s\n' "$installed") || true
}

as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    else
        sudo "$@"
    fi
}

# What apt says goes to build/apt.log, which is shown when it fails.
apt_get() {
    mkdir -p build
    as_root env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o Dpkg::Use-Pty=0 "$@" \
        >>build/apt.log 2>&1
}

# A bare image comes without package lists, an old machine with stale ones: fetch them then.
apt_install() {
    if ! compgen -G '/var/lib/apt/lists/*_Packages*' >/dev/null; then
        apt_get update
    elif apt_get install --no-install-recommends "$@"; then
        return
    else
        apt_get update
    fi
    apt_get install --no-install-recommends "$@"
}

# install_missing SECTION…: installs from Debian what is not there yet, and says what.
install_missing() {
    command -v apt-get >/dev/null ||
        fail "this script installs Debian packages; elsewhere install what resources/debian-packages.txt lists, and use cmake"
    local -a wanted missing
    mapfile -t wanted < <(packages_of "$@")
    mapfile -t missing < <(missing_of "${wanted[@]}")
    [ "${#missing[@]}" -gt 0 ] || return 0
    say "Installing from Debian: ${missing[*]}"
    [ "$(id -u)" = 0 ] || command -v sudo >/dev/null ||
        fail "neither root nor sudo: please have these packages installed, then run this again"
    apt_install "${missing[@]}" || {
        tail -n 20 build/apt.log >&2
        fail "the packages could not be installed; the whole story is in build/apt.log"
    }
}

# build_preset PRESET: configures when needed and builds with all cores.
build_preset() {
    say "Building $1"
    cmake --preset "$1" --log-level=WARNING
    cmake --build --preset "$1" --parallel "$(nproc)"
}
