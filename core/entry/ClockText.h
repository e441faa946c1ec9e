// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/entry/EntryWords.h"

#include <cstddef>
#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// `9:15`, `9h15` or `7:30pm` as minutes after midnight.
std::optional<int> parseClock(std::string_view word);

/// When work began, and how long it lasted where the line says until when.
struct ClockRead {
    int from = 0;
    std::optional<Minutes> lasted;
    std::size_t words = 0;
};

/// Reads `at 9:15`, `9:15-11:30` with any dash, or `from 9:15 to 11:30`, from word `first` on; also
/// times as German and French write them, `um 14 Uhr`, `8 Uhr 30`, `8.30 Uhr`, `à 14h`, `de 9 h à
/// 11 h 30`, `à 14 h - 16 h`; `from 9 to 11:30` may leave out the minutes of the first. Work past
/// midnight ends on the next day.
std::optional<ClockRead> readClock(const EntryWords &line, std::size_t first);

} // namespace lastrivet::entry
