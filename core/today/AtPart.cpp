// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/today/AtPart.h"

#include "core/project/acts/BenchActs.h"
#include "core/readiness/PartTree.h"
#include "core/today/WorkOrder.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace lastrivet::today {

using namespace readiness;

namespace {

/// Gathers what lies at a part and below it.
class Gatherer {
public:
    Gatherer(const Records &records, const Answer &answer, Id<Component> part)
        : m_records(records)
        , m_answer(answer)
        , m_part(part)
        , m_tree(records.components)
        , m_place(m_tree.placeOf(part))
    {
    }

    AtPart gathered()
    {
        AtPart found;
        if (!m_place)
            return found;
        addSteps(found);
        addFasteners(found);
        addClosings(found);
        addPhotos(found);
        return found;
    }

private:
    bool isHere(Id<Component> part) const
    {
        const auto place = m_tree.placeOf(part);
        const Stretch here = m_tree.subtree(*m_place);
        return place && *place >= here.begin && *place < here.end;
    }

    void addSteps(AtPart &found) const
    {
        for (const auto id : m_answer.workable) {
            const Step *step = m_records.find(id);
            if (step && !step->done_on && isHere(step->component_id))
                found.steps.push_back(id);
        }
        found.workable = found.steps.size();
        const std::unordered_set<Id<Step>> known(found.steps.begin(), found.steps.end());
        std::vector<const Step *> others;
        for (const Step &step : m_records.steps) {
            if (!step.withdrawn_on && !step.done_on && !step.dropped_on &&
                !known.contains(step.id) && isHere(step.component_id))
                others.push_back(&step);
        }
        std::ranges::stable_sort(others, {}, [](const Step *step) {
            return std::pair(!step->position, step->position.value_or(0));
        });
        for (const Step *step : others)
            found.steps.push_back(step->id);
    }

    void addFasteners(AtPart &found) const
    {
        for (const Fastener &fastener : m_records.fasteners) {
            if (!fastener.withdrawn_on && !fastener.removed_on && isHere(fastener.component_id))
                found.fasteners.push_back(fastener.id);
        }
        std::ranges::stable_sort(found.fasteners, {}, [this](Id<Fastener> id) {
            return !acts::nextAct(*m_records.find(id)).has_value();
        });
    }

    void addClosings(AtPart &found) const
    {
        const WorkOrder order(m_answer);
        std::unordered_set<Id<Closing>> open;
        for (const ClosingAnswer &closing : m_answer.closings) {
            const Closing *record = m_records.find(closing.id);
            const bool isRegion = record && record->scope == ClosingScope::Region;
            if (!isRegion || isClosed(closing.state) ||
                !std::ranges::binary_search(closing.reach, m_part))
                continue;
            open.insert(closing.id);
            const Blocker *nearest = mustStayOpen(closing.state) ? order.nearest(closing) : nullptr;
            if (nearest)
                found.stays_open.push_back(
                    {closing.id, *nearest,
                     std::ranges::count(closing.blockers, Weight::Must, &Blocker::weight) - 1});
        }
        for (const Check &check : m_records.checks) {
            if (!check.withdrawn_on && !check.done_on && !check.not_applicable &&
                open.contains(check.closing_id))
                found.checks.push_back(check.id);
        }
    }

    /// The part that a photo's link leads to.
    Id<Component> partOf(const Media::Link &link) const
    {
        const auto of = [](const auto *record) {
            return record ? record->component_id : Id<Component>{};
        };
        switch (link.subject) {
        case RecordType::Component:
            return Id<Component>{link.id};
        case RecordType::WorkSession:
            return of(m_records.find(Id<WorkSession>{link.id}));
        case RecordType::Squawk:
            return of(m_records.find(Id<Squawk>{link.id}));
        case RecordType::Closing:
            return of(m_records.find(Id<Closing>{link.id}));
        case RecordType::Step:
            return of(m_records.find(Id<Step>{link.id}));
        case RecordType::Fastener:
            return of(m_records.find(Id<Fastener>{link.id}));
        case RecordType::Measurement:
            return of(m_records.find(Id<Measurement>{link.id}));
        case RecordType::MaterialUse:
            return of(m_records.find(Id<MaterialUse>{link.id}));
        case RecordType::PartLine:
            return of(m_records.find(Id<PartLine>{link.id}));
        default:
            return {};
        }
    }

    void addPhotos(AtPart &found) const
    {
        std::vector<const Media *> photos;
        for (const Media &media : m_records.media) {
            if (!media.withdrawn_on && media.kind == MediaKind::Photo &&
                std::ranges::any_of(
                    media.links, [this](const Media::Link &link) { return isHere(partOf(link)); }))
                photos.push_back(&media);
        }
        std::ranges::stable_sort(photos, [](const Media *a, const Media *b) {
            const auto dayA = dayOf(*a);
            const auto dayB = dayOf(*b);
            return dayA && (!dayB || sortsBefore(*dayB, *dayA));
        });
        for (const Media *media : photos)
            found.photos.push_back(media->id);
    }

    const Records &m_records;
    const Answer &m_answer;
    Id<Component> m_part;
    PartTree m_tree;
    std::optional<readiness::Place> m_place;
};

} // namespace

AtPart atPart(const Records &records, const Answer &answer, Id<Component> part)
{
    return Gatherer(records, answer, part).gathered();
}

std::vector<Id<Component>> workedOnLast(const Records &records, std::size_t count)
{
    std::unordered_map<Id<Component>, Moment> latest;
    for (const WorkSession &session : records.work_sessions) {
        if (session.withdrawn_on || !session.began || !records.findLive(session.component_id))
            continue;
        const auto [known, isNew] = latest.emplace(session.component_id, *session.began);
        if (!isNew && sortsBefore(known->second, *session.began))
            known->second = *session.began;
    }
    std::vector<std::pair<Id<Component>, Moment>> parts(latest.begin(), latest.end());
    std::ranges::sort(parts, [](const auto &a, const auto &b) {
        return a.second == b.second ? a.first < b.first : sortsBefore(b.second, a.second);
    });
    std::vector<Id<Component>> ids;
    for (const auto &[id, moment] : parts) {
        if (ids.size() == count)
            break;
        ids.push_back(id);
    }
    return ids;
}

} // namespace lastrivet::today
