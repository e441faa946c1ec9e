// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Answer.h"

#include <algorithm>

namespace lastrivet::readiness {

const ClosingAnswer *Answer::closing(Id<Closing> id) const
{
    const auto found = std::lower_bound(
        closings.begin(), closings.end(), id,
        [](const ClosingAnswer &answer, Id<Closing> key) { return answer.id < key; });
    return found != closings.end() && found->id == id ? &*found : nullptr;
}

std::optional<State> Answer::badge(Id<Component> id) const
{
    const auto found =
        std::lower_bound(components.begin(), components.end(), id,
                         [](const Badge &badge, Id<Component> key) { return badge.id < key; });
    return found != components.end() && found->id == id ? std::optional(found->state)
                                                        : std::nullopt;
}

} // namespace lastrivet::readiness
