// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/packet/Aircraft.h"
#include "core/packet/SquawkEntry.h"
#include "core/readiness/SquawkFilter.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Squawks as they are listed, to be printed: what calls for work first.
struct SquawkList {
    struct Entry {
        SquawkEntry squawk;
        readiness::Reachable reachable = readiness::Reachable::Yes;
        /// Titles of the closings that bury it, or soon would.
        std::vector<std::string> closings;
        std::optional<Minutes> estimate;
    };

    Aircraft aircraft;
    Moment as_of;
    /// What was asked for, each wish by itself; none when nothing is left out.
    std::vector<Message> filter;
    std::vector<Entry> entries;
    std::vector<Profile::Caution> cautions;
};

SquawkList squawkList(const Records &records, const Profile &profile,
                      const readiness::Answer &answer,
                      const std::vector<readiness::ListedSquawk> &listed,
                      std::vector<Message> filter);

} // namespace lastrivet::packet
