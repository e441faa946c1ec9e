// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/CheckList.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/project/acts/ClosingUp.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

std::vector<CheckList::Line> ownLines(const Region &region, Id<Closing> closing)
{
    const auto takes = [&](const Check &check) {
        return check.closing_id == closing &&
               (!check.planned_on || happened(check.planned_on, region.asOf()) ||
                happened(check.done_on, region.asOf()));
    };
    std::vector<CheckList::Line> lines;
    for (const Check *check : chosenFrom(
             region.records().checks, takes, [](const Check &) { return 0; },
             [](const Check &) { return std::optional<Moment>{}; })) {
        const std::optional<Moment> done = region.ifHappened(check->done_on);
        lines.push_back({check->item, check->source, check->not_applicable, done,
                         done ? personName(region.records(), check->done_by) : std::string{}});
    }
    return lines;
}

std::vector<CheckList::Line> profileLines(const Region &region, const Profile &profile,
                                          const Closing &closing)
{
    std::vector<CheckList::Line> lines;
    const Component *part = region.records().find(closing.component_id);
    const auto inside = acts::fittingChecklists(region.records(), profile, closing);
    for (const Profile::Checklist &list : profile.checklists) {
        const bool isOfPart = part && list.appliesTo(part->kind, part->construction);
        if (!isOfPart && std::find(inside.begin(), inside.end(), &list) == inside.end())
            continue;
        for (const Profile::ChecklistItem &item : list.items)
            lines.push_back({item.item,
                             profile.citation(item.source, item.mark, item.at),
                             false,
                             std::nullopt,
                             {}});
    }
    return lines;
}

} // namespace

std::vector<CheckList> checkLists(const Region &region, const Profile &profile)
{
    std::vector<CheckList> lists;
    for (const Region::Chosen &chosen : region.chosen()) {
        const Closing &closing = *chosen.closing;
        if (closing.made_by == MadeBy::Factory)
            continue;
        CheckList list{closing.title, false, ownLines(region, closing.id)};
        if (list.lines.empty()) {
            list.lines = profileLines(region, profile, closing);
            list.is_from_profile = true;
        }
        lists.push_back(std::move(list));
    }
    return lists;
}

} // namespace lastrivet::packet
