// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// What hangs on a part whose closing must stay open.
struct Tag {
    Id<Closing> closing;
    std::string title;
    std::string part;
    readiness::State state = readiness::State::Hold;
    /// What must come first: squawks of airworthiness, then the nearest of the rest.
    std::vector<Message> waits_for;
    /// How many of them, from the first, are squawks of airworthiness.
    std::size_t of_airworthiness = 0;
    Moment as_of;
};

/// Tags for those of the closings that must stay open, in the order of the ids; the others need
/// none, and are left out.
std::vector<Tag> tags(const Records &records, const readiness::Answer &answer,
                      const IdSet<Closing> &chosen);

/// Every closing that must stay open and in whose reach work was done.
IdSet<Closing> closingsToTag(const readiness::Answer &answer);

} // namespace lastrivet::packet
