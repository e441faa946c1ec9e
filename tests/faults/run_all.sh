#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
#   run_all.sh [BUILD-FOLDER]
#
# Runs the tests of faults with all their rounds, which takes half an hour of a quiet machine, and
# prints a table of what was broken how often, and what came of it. In memory, so that the disk of
# this computer is spared: TMPDIR=/dev/shm unless it is set.

set -uo pipefail
here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
build="${1:-$here/../../build/dev}/tests/faults"
export LASTRIVET_FAULTS=full TMPDIR="${TMPDIR:-/dev/shm}"

printf '| %-44s | %6s | %s |\n|---|---|---|\n' "what was done" "times" "what came of it"
failed=0
ran=0
for program in fault_tests packet_fault_tests; do
    [ -x "$build/$program" ] || continue
    ran=1
    "$build/$program" | tee "$TMPDIR/$program.log" | grep '^| '
    [ "${PIPESTATUS[0]}" = 0 ] || failed=1
done
[ "$failed" = 0 ] || echo "Some failed: see $TMPDIR/*fault_tests.log"
[ "$ran" = 1 ] || echo "Nothing is built in $build"
[ "$failed" = 0 ] && [ "$ran" = 1 ]
