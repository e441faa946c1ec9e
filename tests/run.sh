#!/usr/bin/env bash
# SPDX-FileCopyrightText: The Lastrivet contributors
# SPDX-License-Identifier: GPL-3.0-or-later
#
# Builds and runs all tests. With SANITIZED=1 those of the core run under the address and
# undefined-behaviour sanitizers, which takes as long again. Ends with CTest's summary.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
source resources/setup.sh

run_tests() {
    say "Testing $1"
    ctest --test-dir "build/$1" --output-on-failure --parallel "$(nproc)"
}

install_missing build run test
if [ "${SANITIZED:-0}" != 1 ]; then
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
