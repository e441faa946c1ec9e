// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/fuzz/Targets.h"

#include <cstddef>

/// What libFuzzer calls; the build names the target.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *bytes, std::size_t size)
{
    lastrivet::fuzz::LASTRIVET_FUZZ_TARGET({bytes, size});
    return 0;
}
