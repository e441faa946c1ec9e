#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Builds and runs all tests: those of the core and of the terminal program under the address and
# undefined-behaviour sanitizers, then the desktop's and the faults. With QUICK=1 all of them
# without sanitizers. Ends with CTest's summary.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source resources/setup.sh

run_tests() {
    say "Testing $1"
    ctest --test-dir "build/$1" --output-on-failure --parallel "$(nproc)"
}

install_missing build run test
if [ "${QUICK:-0}" = 1 ]; then
    build_preset dev
    run_tests dev
    exit
fi
sanitized=passed
build_preset asan
run_tests asan || sanitized=failed
build_preset desktop
[ "$sanitized" = passed ] || say "The sanitized tests FAILED, see above"
run_tests desktop
[ "$sanitized" = passed ]
