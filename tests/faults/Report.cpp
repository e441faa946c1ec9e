// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/faults/Report.h"

#include <fmt/format.h>

#include <cstdlib>
#include <iostream>

namespace lastrivet::faults {

int times(int brief, int full)
{
    const char *wish = std::getenv("LASTRIVET_FAULTS");
    return wish && std::string_view(wish) == "full" ? full : brief;
}

void report(std::string_view what, int count, std::string_view outcome)
{
    std::cout << fmt::format("| {:<44} | {:>6} | {} |\n", what, count, outcome) << std::flush;
}

} // namespace lastrivet::faults
