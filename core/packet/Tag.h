// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <string>
#include <vector>

namespace lastrivet::packet {

/// What hangs on a part whose closing must stay open.
struct Tag {
    Id<Closing> closing;
    std::string title;
    std::string part;
    readiness::State state = readiness::State::Hold;
    /// What must come first, the nearest of it first.
    std::vector<Message> waits_for;
    Moment as_of;
};

/// Tags for those of the closings that must stay open, in the order of the ids; the others need
/// none, and are left out.
std::vector<Tag> tags(const Records &records, const readiness::Answer &answer,
                      const IdSet<Closing> &chosen);

/// Every closing that must stay open and in whose reach work was done.
IdSet<Closing> closingsToTag(const readiness::Answer &answer);

} // namespace lastrivet::packet
