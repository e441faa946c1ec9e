// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/ClosingUp.h"

#include "core/base/SortedIds.h"
#include "core/profiles/HoldPoints.h"
#include "core/project/acts/Signing.h"

#include <unordered_set>

namespace lastrivet::acts {

namespace {

/// The kinds and constructions of everything at and below the enclosed parts.
struct Enclosed {
    WordSet<ComponentKind> kinds;
    WordSet<Construction> constructions;
};

Enclosed enclosedBy(const Records &records, const Closing &closing)
{
    std::unordered_set<Id<Component>> inside(closing.encloses.begin(), closing.encloses.end());
    if (inside.empty())
        inside.insert(closing.component_id);
    bool isGrowing = true;
    while (isGrowing) {
        isGrowing = false;
        for (const Component &part : records.components)
            isGrowing |= inside.contains(part.parent_id) && !part.withdrawn_on &&
                         inside.insert(part.id).second;
    }
    Enclosed enclosed;
    for (const auto id : inside) {
        const Component *part = records.find(id);
        if (!part)
            continue;
        enclosed.kinds.insert(part->kind);
        if (part->construction)
            enclosed.constructions.insert(*part->construction);
    }
    return enclosed;
}

/// Of nothing in particular, for anything.
template <class Word> bool fits(WordSet<Word> wanted, WordSet<Word> given)
{
    return wanted.isEmpty() || wanted.meets(given);
}

void addChecks(Edit &edit, const Closing &closing,
               const std::vector<const Profile::Checklist *> &lists)
{
    for (const auto *list : lists) {
        for (const auto &line : list->items) {
            Check check;
            check.closing_id = closing.id;
            check.item = line.item;
            check.source = edit.profile().citation(line.source, line.mark, line.at);
            check.planned_on = edit.today();
            edit.put(std::move(check));
        }
    }
}

} // namespace

void close(Edit &edit, Id<Closing> id, const Act &act)
{
    edit.update(id, [&](Closing &closing) {
        closing.events.push_back({act.on, std::nullopt, act.by, act.reason, act.approximate});
    });
    std::vector<Id<Step>> steps;
    for (const Step &step : edit.records().steps) {
        if (step.closes == id && !step.withdrawn_on && !step.done_on && !step.dropped_on)
            steps.push_back(step.id);
    }
    for (const auto step : steps)
        edit.update(step, [&](Step &copy) { copy.done_on = act.on; });
}

void reopen(Edit &edit, Id<Closing> id, const Act &act)
{
    edit.update(id, [&](Closing &closing) {
        closing.events.push_back({std::nullopt, act.on, act.by, act.reason, act.approximate});
    });
}

Id<SignOff> acceptLate(Edit &edit, Id<Closing> id, SignOff acceptance)
{
    acceptance.hold_point_id = {};
    const auto signature = sign(edit, std::move(acceptance));
    edit.update(
        id, [signature](Closing &closing) { insertSorted(closing.late_acceptances, signature); });
    return signature;
}

std::vector<const Profile::Checklist *>
fittingChecklists(const Records &records, const Profile &profile, const Closing &closing)
{
    const Enclosed enclosed = enclosedBy(records, closing);
    std::vector<const Profile::Checklist *> lists;
    for (const auto &list : profile.checklists) {
        if (fits(list.component_kinds, enclosed.kinds) &&
            fits(list.constructions, enclosed.constructions))
            lists.push_back(&list);
    }
    return lists;
}

Id<Closing> addClosing(Edit &edit, Closing closing,
                       const std::vector<const Profile::Checklist *> &lists)
{
    if (closing.scope == ClosingScope::Region && closing.encloses.empty())
        closing.encloses = {closing.component_id};
    if (closing.scope == ClosingScope::Aircraft)
        closing.encloses.clear();
    closing.id = edit.put(closing);
    if (closing.made_by == MadeBy::Factory)
        return closing.id;
    for (HoldPoint &point : holdPointsFor(closing, edit.records(), edit.profile()))
        edit.put(std::move(point));
    addChecks(edit, closing, lists);
    return closing.id;
}

void tick(Edit &edit, const std::vector<Id<Check>> &checks, Id<Person> by, Moment on)
{
    for (const auto id : checks) {
        edit.update(id, [&](Check &check) {
            check.done_on = on;
            check.done_by = by;
            check.not_applicable = false;
        });
    }
}

void untick(Edit &edit, Id<Check> id)
{
    edit.update(id, [](Check &check) {
        check.done_on.reset();
        check.done_by = {};
    });
}

void setNotApplicable(Edit &edit, Id<Check> id, bool isNotApplicable)
{
    edit.update(id, [&](Check &check) {
        check.not_applicable = isNotApplicable;
        if (isNotApplicable) {
            check.done_on.reset();
            check.done_by = {};
        }
    });
}

bool isClosed(const Closing &closing, Moment by)
{
    bool closed = false;
    for (const auto &event : closing.events) {
        if (happened(event.closed_on, by))
            closed = true;
        if (happened(event.opened_on, by))
            closed = false;
    }
    return closed;
}

std::optional<Moment> closedBefore(const Closing &closing, Moment by)
{
    std::optional<Moment> closed;
    for (const auto &event : closing.events) {
        if (happened(event.closed_on, by))
            closed = event.closed_on;
        if (happened(event.opened_on, by))
            closed.reset();
    }
    return closed && after(by, *closed) ? closed : std::nullopt;
}

std::optional<Moment> lastClosed(const Closing &closing)
{
    std::optional<Moment> closed;
    for (const auto &event : closing.events) {
        if (event.closed_on)
            closed = event.closed_on;
    }
    return closed;
}

} // namespace lastrivet::acts
