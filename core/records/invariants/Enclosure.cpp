// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Ancestors.h"
#include "core/records/invariants/Families.h"

#include <algorithm>
#include <unordered_map>

namespace lastrivet::invariants {

namespace {

using ClosingList = std::vector<const Closing *>;

void checkRegion(Review &review, const Closing &closing)
{
    if (closing.encloses.empty())
        review.report(closing, "{0} encloses nothing; a region encloses at least one part.");
    const Component *own = review.records().find(closing.component_id);
    if (!own)
        return;
    anyUpwards(review.records(), own->parent_id, [&](const Component &above) {
        if (std::binary_search(closing.encloses.begin(), closing.encloses.end(), above.id))
            review.report(closing, "{0} belongs to {1} and cannot enclose {2}, which is above it.",
                          {review.nameOf(closing.component_id), review.nameOf(above.id)});
        return above.id == own->id;
    });
}

void checkAircraft(Review &review, const ClosingList &ofAircraft)
{
    for (const Closing *closing : ofAircraft) {
        if (!closing->encloses.empty())
            review.report(*closing, "{0} is of the whole aircraft and encloses no part by name.");
        if (closing != ofAircraft.front())
            review.report(*closing,
                          "{0} is a second closing of the whole aircraft; the first is {1}.",
                          {review.nameOf(ofAircraft.front()->id)});
    }
}

/// For each permanent region: those that it lies inside of.
class Nesting {
public:
    explicit Nesting(const Records &records)
    {
        std::unordered_map<std::int64_t, ClosingList> enclosers;
        for (const Closing &closing : records.closings) {
            if (!isBox(closing))
                continue;
            m_boxes.push_back(&closing);
            for (const Id<Component> part : closing.encloses)
                enclosers[part.value()].push_back(&closing);
        }
        for (const Closing *box : m_boxes) {
            ClosingList &outer = m_outer[box];
            anyUpwards(records, box->component_id, [&](const Component &above) {
                const auto found = enclosers.find(above.id.value());
                if (found != enclosers.end())
                    addOthers(outer, found->second, *box);
                return false;
            });
        }
    }

    const ClosingList &boxes() const { return m_boxes; }

    /// A box that lies directly inside of `box` and, directly or not, around it; null when none.
    const Closing *mutual(const Closing *box) const
    {
        std::unordered_map<const Closing *, const Closing *> throughOuter;
        ClosingList open;
        for (const Closing *outer : m_outer.at(box)) {
            if (throughOuter.try_emplace(outer, outer).second)
                open.push_back(outer);
        }
        while (!open.empty()) {
            const Closing *at = open.back();
            open.pop_back();
            if (at == box)
                return throughOuter.at(at);
            for (const Closing *outer : m_outer.at(at)) {
                if (throughOuter.try_emplace(outer, throughOuter.at(at)).second)
                    open.push_back(outer);
            }
        }
        return nullptr;
    }

private:
    static bool isBox(const Closing &closing)
    {
        return !closing.withdrawn_on && closing.permanent && closing.scope == ClosingScope::Region;
    }
    static void addOthers(ClosingList &outer, const ClosingList &candidates, const Closing &box)
    {
        for (const Closing *candidate : candidates) {
            if (candidate != &box && candidate->component_id != box.component_id)
                outer.push_back(candidate);
        }
    }

    ClosingList m_boxes;
    std::unordered_map<const Closing *, ClosingList> m_outer;
};

void checkNesting(Review &review)
{
    const Nesting nesting{review.records()};
    for (const Closing *box : nesting.boxes()) {
        const Closing *outer = nesting.mutual(box);
        if (outer && box->id <= outer->id)
            review.report(*box, "{0} lies inside {1}, which lies inside it in turn.",
                          {review.nameOf(outer->id)});
    }
}

bool bearsOnNesting(const Closing *was, const Closing *is)
{
    return !was || !is || was->component_id != is->component_id || was->scope != is->scope ||
           was->encloses != is->encloses || was->permanent != is->permanent ||
           was->withdrawn_on != is->withdrawn_on;
}

/// A new part has nothing above or below it but what was touched too.
bool bearsOnNesting(const Component *was, const Component *is)
{
    return was && (!is || was->parent_id != is->parent_id);
}

template <class Record> bool anyBearsOnNesting(const Review &review)
{
    return review.anyTouched<Record>(
        [](const Record *was, const Record *is) { return bearsOnNesting(was, is); });
}

} // namespace

void checkEnclosure(Review &review)
{
    if (!review.touchesAny(RecordType::Closing, RecordType::Component))
        return;
    if (review.before() && !anyBearsOnNesting<Closing>(review) &&
        !anyBearsOnNesting<Component>(review))
        return;
    ClosingList ofAircraft;
    for (const Closing &closing : review.records().closings) {
        if (closing.withdrawn_on)
            continue;
        if (closing.scope == ClosingScope::Aircraft)
            ofAircraft.push_back(&closing);
        else
            checkRegion(review, closing);
    }
    checkAircraft(review, ofAircraft);
    checkNesting(review);
}

} // namespace lastrivet::invariants
