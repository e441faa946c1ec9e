// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"

#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// How long something took, as people write it: `2h15`, `2 h 15`, `1:30`, `90m`, `90 min`,
/// `.5h`, `1,5 h`. Empty for anything else, for nothing, and for more than 99 hours.
std::optional<Minutes> parseDuration(std::string_view text);

} // namespace lastrivet::entry
