// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <cstdint>
#include <vector>

namespace lastrivet::readiness {

/// Where photographs of the inside are missing while they can still be taken.
struct MissingPictures {
    struct OfClosing {
        Id<Closing> closing;
        /// Too few photographs, stale ones, or both.
        std::vector<Rule> rules;
        /// How many count so far.
        std::int64_t have = 0;

        friend bool operator==(const OfClosing &, const OfClosing &) = default;
    };
    /// Open closings with work behind them, each once, in the answer's order.
    std::vector<OfClosing> closings;
    /// Parts that were worked on, lie in the reach of a permanent closing that is still open, and
    /// have no picture of the inside at or below them; in the order of the tree.
    std::vector<Id<Component>> parts;
    /// Photos and videos that belong to no part and no closing, by id.
    std::vector<Id<Media>> unassigned;
};

/// A pure function of the snapshot and of the readiness answer worked out from it.
MissingPictures missingPictures(const Records &records, const Answer &answer);

} // namespace lastrivet::readiness
