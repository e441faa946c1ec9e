// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <cstdint>
#include <string>
#include <unordered_set>
#include <vector>

/// The live records of some parts, in the order in which people look for them; and new ones from a
/// few words. Part 0 stands for what is on no part.
namespace lastrivet::ui::sections {

using Ids = std::vector<std::int64_t>;
using Parts = std::unordered_set<std::int64_t>;

Ids steps(const Records &records, const Parts &parts);
Ids sessions(const Records &records, const Parts &parts);
Ids squawks(const Records &records, const Parts &parts);
Ids closings(const Records &records, const Parts &parts);
Ids deviations(const Records &records, const Parts &parts);
Ids bulletins(const Records &records, const Parts &parts);
Ids fasteners(const Records &records, const Parts &parts);
Ids measurements(const Records &records, const Parts &parts);
Ids partLines(const Records &records, const Parts &parts);
Ids materials(const Records &records, const Parts &parts);

std::int64_t newStep(Edit &edit, Id<Component> part, const std::string &words);
std::int64_t newSquawk(Edit &edit, Id<Component> part, const std::string &words);
std::int64_t newMeasurement(Edit &edit, Id<Component> part, const std::string &words);
std::int64_t newDeviation(Edit &edit, Id<Component> part, const std::string &words);
std::int64_t newPartLine(Edit &edit, Id<Component> part, const std::string &words);
std::int64_t newBulletin(Edit &edit, Id<Component> part, const std::string &words);

} // namespace lastrivet::ui::sections
