#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Builds and runs all tests; before them the core tests under the address and undefined-behaviour
# sanitizers, unless QUICK=1. Ends with CTest's summary of the whole.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source resources/setup.sh

run_tests() {
    say "Testing $1"
    ctest --test-dir "build/$1" --output-on-failure --parallel "$(nproc)"
}

install_missing build run test
sanitized=passed
if [ "${QUICK:-0}" != 1 ]; then
    build_preset asan
    run_tests asan || sanitized=failed
fi
build_preset dev
[ "$sanitized" = passed ] || say "The sanitized core tests FAILED, see above"
run_tests dev
[ "$sanitized" = passed ]
