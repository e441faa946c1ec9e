// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::packet {

/// A part with its depth in the tree, 0 at the top.
struct PartInOrder {
    const Component *part = nullptr;
    int depth = 0;
};

/// The live parts in the order in which the tree is read.
std::vector<PartInOrder> partsInOrder(const Records &records);

} // namespace lastrivet::packet
