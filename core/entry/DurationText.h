// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/entry/EntryWords.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// As `parseDuration`, in minutes and without bounds: also zero, negative and absurdly large ones,
/// so that it can be said what is wrong. Empty for what is no duration.
std::optional<std::int64_t> readMinutes(std::string_view text);

/// A length of time at the front of some words, and how many of them it took; none when that is 0.
struct LengthRead {
    std::int64_t minutes = 0;
    std::size_t words = 0;

    bool isOfOneDay() const { return minutes > 0 && minutes <= 24 * 60; }
};

/// The longest run of words of `line` from `first` to before `last` that is a length of time,
/// whether it makes sense or not.
LengthRead readLength(const EntryWords &line, std::size_t first, std::size_t last);

/// How long something took, as people write it: `2h15`, `2 h 15`, `1:30`, `90m`, `90 min`,
/// `.5h`, `1,5 h`, `1½ h`, `3/4 h`, `2 Std`, `2 heures`, `dreieinhalb Stunden`. Empty for anything
/// else, for nothing, and for more than 99 hours.
std::optional<Minutes> parseDuration(std::string_view text);

} // namespace lastrivet::entry
