// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace lastrivet::faults {

/// How often a test breaks something: `full` when LASTRIVET_FAULTS=full is in the environment,
/// else `brief`, which takes seconds.
int times(int brief, int full);

/// A line of the table of counts on standard output.
void report(std::string_view what, int count, std::string_view outcome);

} // namespace lastrivet::faults
