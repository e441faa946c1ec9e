// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// A paper from maker or authority that concerns the region.
struct BulletinEntry {
    Id<Bulletin> id;
    std::string number;
    BulletinKind kind = BulletinKind::Bulletin;
    std::string title;
    std::string issuer;
    bool mandatory = false;
    std::optional<bool> applies;
    std::optional<Moment> received_on;
    std::optional<Moment> complied_on;
    std::string basis;
};

/// Bulletins of the region and those that its blockers name, by day received.
std::vector<BulletinEntry> bulletins(const Region &region);

} // namespace lastrivet::packet
