// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// As `parseDuration`, whatever the number: also nothing, less than nothing and absurdly much, so that
/// it can be said what is wrong with it. Empty for what is no duration.
std::optional<std::int64_t> readMinutes(std::string_view text);

/// How long something took, as people write it: `2h15`, `2 h 15`, `1:30`, `90m`, `90 min`,
/// `.5h`, `1,5 h`, `2 Std`, `2 heures`. Empty for anything else, for nothing, and for more than 99 hours.
std::optional<Minutes> parseDuration(std::string_view text);

} // namespace lastrivet::entry
