// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/support/ProjectBuilder.h"

namespace lastrivet::test {

/// How many records of each kind a load has.
struct LoadSize {
    std::size_t components = 5000;
    std::size_t closings = 2500;
    std::size_t steps = 20000;
    std::size_t sessions = 20000;
    std::size_t squawks = 5000;
    std::size_t media = 40000;

    LoadSize times(std::size_t factor) const;
};

/// Fills a valid project of that size, ten builders' lifetimes as it stands, from a seed.
///
/// Parts lie five deep, as many times side by side as the size is larger; two thirds of the
/// closings are closed, most without gaps; the rest have work, squawks and signatures in every
/// condition.
void fillReferenceLoad(ProjectBuilder &project, unsigned seed, const LoadSize &size = {});

} // namespace lastrivet::test
