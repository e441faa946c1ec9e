// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace lastrivet::exchange {

inline constexpr std::string_view documentFormat = "lastrivet-records";
inline constexpr std::int64_t documentVersion = 1;

/// The record type that an array of the document, or a CSV file, is named after.
constexpr std::optional<RecordType> recordTypeOfPlural(std::string_view name)
{
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        if (plural(RecordType(i)) == name)
            return RecordType(i);
    }
    return std::nullopt;
}

} // namespace lastrivet::exchange
