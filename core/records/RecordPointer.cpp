// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/RecordPointer.h"

#include "core/base/CaseFold.h"
#include "core/base/Id.h"
#include "core/base/ParseNumber.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet {

namespace {

constexpr std::string_view scheme = "lastrivet:";

std::optional<std::int64_t> readId(std::string_view digits)
{
    const auto id = parseNumber<std::int64_t>(digits);
    return id && *id >= 1 && *id <= largestId ? id : std::nullopt;
}

} // namespace

std::string pointerTo(RecordRef record)
{
    return fmt::format("{}{}:{}", scheme, word(record.type), record.id);
}

std::optional<RecordRef> readPointer(std::string_view text)
{
    const std::string lower = asciiLower(text);
    if (!lower.starts_with(scheme))
        return std::nullopt;
    const std::string_view rest = std::string_view(lower).substr(scheme.size());
    const std::size_t colon = rest.find(':');
    if (colon == rest.npos)
        return std::nullopt;
    const std::optional<std::int64_t> id = readId(rest.substr(colon + 1));
    const auto &types = Words<RecordType>::list;
    const auto type = std::find(types.begin(), types.end(), rest.substr(0, colon));
    if (!id || type == types.end())
        return std::nullopt;
    return RecordRef{RecordType(type - types.begin()), *id};
}

} // namespace lastrivet
