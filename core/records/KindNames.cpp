// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/KindNames.h"

#include <array>

namespace lastrivet {

Message kindName(HoldPointKind kind)
{
    constexpr std::array<std::string_view, Words<HoldPointKind>::list.size()> names{
        "own check",        "tool and debris check", "independent check", "pre-cover inspection",
        "stage inspection", "technical visit",       "final inspection"};
    return {names[std::size_t(kind)], {}};
}

Message kindName(InspectionKind kind)
{
    const auto signedThere = parseWord<HoldPointKind>(word(kind));
    return signedThere ? kindName(*signedThere) : Message{"workshop visit", {}};
}

} // namespace lastrivet
