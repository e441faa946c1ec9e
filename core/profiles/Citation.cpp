// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/Citation.h"

#include "core/base/Tongue.h"

#include <string_view>

namespace lastrivet {

namespace {

constexpr std::string_view secondHand = "{0} [second-hand]";
constexpr std::string_view fromMemory = "{0} [from memory]";
/// As long as the place for the title in both.
constexpr std::size_t placeSize = std::string_view("{0}").size();

} // namespace

Message citationMessage(const std::string &citation)
{
    for (const std::string_view pattern : {secondHand, fromMemory}) {
        const std::string_view mark = pattern.substr(placeSize);
        if (citation.ends_with(mark))
            return {pattern, {citation.substr(0, citation.size() - mark.size())}};
    }
    return verbatim(citation);
}

} // namespace lastrivet
