// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

/// "lastrivet:component:12": a record in one word, for labels that a machine reads. Codes and names
/// change, the id of a record never does.
std::string pointerTo(RecordRef record);

/// Reads it back, upper or lower case; empty for every other text.
std::optional<RecordRef> readPointer(std::string_view text);

} // namespace lastrivet
