#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
#   check_package.sh [BARE-ROOT]
#
# Makes the package for Debian, asks lintian, desktop-file-validate and appstreamcli about it, installs
# it into a bare Debian root, which debootstrap makes in BARE-ROOT unless it is there already, and
# works with the demo there: imports it, asks for readiness, prints a packet, verifies. As root.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
source resources/setup.sh
root="${1:-build/bare-root}"

install_missing build run package
build_preset package
say "Packing"
(cd build/package && cpack --config CPackConfig.cmake >/dev/null)
package=$(ls -t build/package/lastrivet_*.deb | head -n 1)
dpkg-deb --info "$package" | sed -n '/^ Package/,$p'

say "Asking about it"
lintian --fail-on error,warning "$package"
desktop-file-validate resources/desktop/lastrivet.desktop
if command -v appstreamcli >/dev/null; then
    appstreamcli validate --no-net build/package/resources/desktop/lastrivet.metainfo.xml
fi

if [ ! -d "$root/usr" ]; then
    say "Making a bare Debian in $root"
    debootstrap --variant=minbase bookworm "$root" >build/debootstrap.log
fi
say "Installing it there"
cp "$package" "$root/tmp/lastrivet.deb"
chroot "$root" sh -c 'export DEBIAN_FRONTEND=noninteractive
    { apt-get -q update && apt-get -q -y --no-install-recommends install /tmp/lastrivet.deb; } >/tmp/apt.log 2>&1 ||
        { tail -n 20 /tmp/apt.log; exit 1; }'

say "Working with it there"
chroot "$root" sh -euc '
    cd /tmp && rm -rf Demo.lastrivet
    lastrivet-cli import Demo.lastrivet /usr/share/lastrivet/demo/demo.json --create
    lastrivet-cli ready Demo.lastrivet | head -n 12
    lastrivet-cli workshop torque --thread 1/4-28 --nut tension
    closing=$(lastrivet-cli ready Demo.lastrivet --json | sed -n "s/.*\"closings\":\[{\"id\":\([0-9]*\).*/\1/p")
    lastrivet-cli packet Demo.lastrivet --closing "$closing" --to packet.pdf
    head -c 5 packet.pdf | grep -q %PDF
    lastrivet-cli verify Demo.lastrivet
    QT_QPA_PLATFORM=offscreen lastrivet --version'
say "The package is $package"
