// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/ExifTime.h"

#include "core/base/Digits.h"
#include "core/base/ParseNumber.h"

#include <string>

namespace lastrivet::evidence {

namespace {

std::optional<int> twoDigits(std::string_view text)
{
    const auto two = text.substr(0, 2);
    return two.size() == 2 && isAllDigits(two) ? parseNumber<int>(two) : std::nullopt;
}

} // namespace

std::optional<Moment> parseExifTime(std::string_view text)
{
    if (text.size() < 16 || text[4] != ':' || text[7] != ':' || text[10] != ' ' || text[13] != ':')
        return std::nullopt;
    std::string iso(text.substr(0, 16));
    iso[4] = '-';
    iso[7] = '-';
    iso[10] = 'T';
    return Moment::parse(iso);
}

std::optional<int> parseExifOffset(std::string_view text)
{
    if (text.size() < 6 || (text[0] != '+' && text[0] != '-') || text[3] != ':')
        return std::nullopt;
    const auto hours = twoDigits(text.substr(1));
    const auto minutes = twoDigits(text.substr(4));
    // Offsets in use run from -12:00 to +14:00 (IANA time zone database).
    if (!hours || !minutes || *hours > 14 || *minutes > 59)
        return std::nullopt;
    const int offset = *hours * 60 + *minutes;
    return text[0] == '-' ? -offset : offset;
}

} // namespace lastrivet::evidence
