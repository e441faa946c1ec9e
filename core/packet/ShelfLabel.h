// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Records.h"

#include <string>
#include <vector>

namespace lastrivet::packet {

/// What is stuck on a shelf, a tin or a drawer.
struct ShelfLabel {
    RecordRef record;
    /// What to look for: the code of a part, the number of a lot; empty where the name says it.
    std::string mark;
    std::string name;
    std::vector<Message> lines;
};

/// Parts in the order of the tree.
std::vector<ShelfLabel> partLabels(const Records &records, bool onlyThoseWithShelf);
/// Material lots by name, with their day of expiry.
std::vector<ShelfLabel> lotLabels(const Records &records);
/// Tools by name, with the day on which the newest calibration runs out.
std::vector<ShelfLabel> toolLabels(const Records &records);

} // namespace lastrivet::packet
