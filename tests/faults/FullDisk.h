// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/faults/Acts.h"
#include "tests/faults/Site.h"

#include <functional>
#include <string_view>

namespace lastrivet::faults {

/// How often an act was tried without room, and refused.
struct FullCounts {
    int tried = 0;
    int refused = 0;
};

/// One act between `fill` and `makeRoom`. Fails the test unless it is done, or refused in a
/// sentence with everything as it was.
void tryFull(const Act &act, Site &site, FullCounts &counts, const std::function<void()> &fill,
             const std::function<void()> &makeRoom);
/// Fails the test unless with room again everything is whole and the act is done.
void requireGoesOn(const Act &act, Site &site);
void reportFull(std::string_view what, const FullCounts &counts);

/// Tries acts while no file may grow beyond a size, from none on.
void limitFiles(std::span<const Act> acts);
/// Tries acts on a disk with more and more room, from none on; says so where none can be mounted.
void fillSmallDisk(std::span<const Act> acts);

} // namespace lastrivet::faults
