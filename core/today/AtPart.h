// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <vector>

namespace lastrivet::today {

/// What there is to do at one part and below it.
struct AtPart {
    /// Neither done nor dropped; what can be worked on first, in its order.
    std::vector<Id<Step>> steps;
    /// How many of the steps can be worked on.
    std::size_t workable = 0;
    /// Not removed; those with something left to do first.
    std::vector<Id<Fastener>> fasteners;
    /// Not ticked, of closings that are not closed and reach the part.
    std::vector<Id<Check>> checks;
    /// The closings that reach the part and must stay open, begun or not.
    std::vector<StaysOpen> stays_open;
    /// Newest first, of the part and of work, steps, squawks, fasteners, measurements, material
    /// uses, packing lines and closings at it.
    std::vector<Id<Media>> photos;
};

AtPart atPart(const Records &records, const readiness::Answer &answer, Id<Component> part);

/// The parts that were worked on last, the latest first, each once.
std::vector<Id<Component>> workedOnLast(const Records &records, std::size_t count);

} // namespace lastrivet::today
