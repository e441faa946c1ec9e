// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"
#include "core/packet/Standing.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// The sheet of one closing on which deficiencies are written and signatures given.
struct SheetToSign {
    /// A finding of an earlier inspection whose correction nobody has verified yet.
    struct Deficiency {
        std::string number;
        std::string inspection;
        std::string text;
        std::string correction;
        std::optional<Moment> corrected_on;
        std::string corrected_by;
    };

    Id<Closing> closing;
    std::string title;
    std::string part;
    std::vector<Deficiency> deficiencies;
    /// True when it was closed with gaps, so that somebody must say whether it may stay closed.
    bool asks_late_acceptance = false;
    /// Every hold point; those with a valid signature or a waiver need none.
    std::vector<Standing::HoldPointLine> hold_points;
};

/// One sheet for each of the chosen closings on which there is something to sign.
std::vector<SheetToSign> sheetsToSign(const Region &region, const std::vector<Standing> &standings);

} // namespace lastrivet::packet
