// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"
#include "core/profiles/Profile.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// What the inspector looks at before one closing, each line with a box of his own.
struct CheckList {
    struct Line {
        std::string item;
        std::string source;
        bool not_applicable = false;
        /// Ticked by the builder.
        std::optional<Moment> done_on;
        std::string done_by;
    };

    std::string closing;
    /// True when the closing has no list of its own and those of the profile were taken that fit
    /// its part or what it encloses.
    bool is_from_profile = false;
    std::vector<Line> lines;
};

/// One list for each of the chosen closings that is not made by a factory.
std::vector<CheckList> checkLists(const Region &region, const Profile &profile);

} // namespace lastrivet::packet
