// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstddef>
#include <map>

namespace lastrivet::packet {

/// The place of each live part in the tree read from the top, for sorting; no part comes first.
std::map<Id<Component>, std::size_t> placesInTree(const Records &records);

/// The part a record belongs to; none for records of no part, or of several.
Id<Component> partOf(const Records &records, RecordRef record);

} // namespace lastrivet::packet
