// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>

namespace lastrivet {

/// The ids that this program makes rise with time: `idsPerSecond` for each second since `idStart`.
inline constexpr std::int64_t idsPerSecond = 100'000;
inline constexpr std::chrono::sys_days idStart = std::chrono::year{2025} / std::chrono::January / 1;

/// The day (UTC) on which an id was made; none for the small ids 1, 2, 3 … of imported documents.
inline std::optional<std::chrono::sys_days> dayOfId(std::int64_t id)
{
    constexpr std::int64_t idsPerDay = idsPerSecond * 86'400;
    if (id < idsPerDay)
        return std::nullopt;
    return idStart + std::chrono::days{id / idsPerDay};
}

} // namespace lastrivet
