// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/profiles/Profile.h"

#include "core/records/Closing.h"

#include <algorithm>

namespace lastrivet {

bool Profile::HoldPointRule::appliesTo(const Closing &closing, WordSet<ComponentKind> inReach) const
{
    if (closing.made_by == MadeBy::Factory || closing.scope != scope)
        return false;
    if (scope == ClosingScope::Region && !closing.permanent)
        return false;
    return component_kinds.isEmpty() || component_kinds.meets(inReach);
}

bool Profile::Checklist::appliesTo(ComponentKind kind,
                                   std::optional<Construction> construction) const
{
    const bool rightKind = component_kinds.isEmpty() || component_kinds.contains(kind);
    const bool rightConstruction =
        constructions.isEmpty() || (construction && constructions.contains(*construction));
    return rightKind && rightConstruction;
}

const Profile::Source *Profile::findSource(std::string_view sourceId) const
{
    const auto found = std::ranges::find(sources, sourceId, &Source::id);
    return found == sources.end() ? nullptr : &*found;
}

std::string Profile::citation(std::string_view sourceId, Mark mark, std::string_view at) const
{
    const Source *source = findSource(sourceId);
    if (!source)
        return std::string(sourceId);
    std::string text = source->title;
    if (!source->edition.empty())
        text.append(", ").append(source->edition);
    if (!at.empty())
        text.append(", ").append(at);
    if (mark == Mark::SecondHand)
        text.append(" [second-hand]");
    if (mark == Mark::Memory)
        text.append(" [from memory]");
    return text;
}

} // namespace lastrivet
