// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Places.h"

#include <algorithm>
#include <tuple>
#include <vector>

namespace lastrivet::packet {

namespace {

using Children = std::map<Id<Component>, std::vector<const Component *>>;

bool comesBefore(const Component *a, const Component *b)
{
    const auto key = [](const Component &part) {
        return std::tuple{!part.position, part.position.value_or(0), part.id};
    };
    return key(*a) < key(*b);
}

template <class Record> Id<Component> partOfRecord(const Records &records, std::int64_t id)
{
    const Record *record = records.findLive(Id<Record>{id});
    return record ? record->component_id : Id<Component>{};
}

} // namespace

std::map<Id<Component>, std::size_t> placesInTree(const Records &records)
{
    Children children;
    for (const Component &part : records.components) {
        if (!part.withdrawn_on)
            children[part.parent_id].push_back(&part);
    }
    std::map<Id<Component>, std::size_t> places;
    std::vector<Id<Component>> open{Id<Component>{}};
    while (!open.empty()) {
        const Id<Component> next = open.back();
        open.pop_back();
        places.emplace(next, places.size());
        const auto below = children.find(next);
        if (below == children.end())
            continue;
        std::sort(below->second.begin(), below->second.end(), comesBefore);
        for (auto part = below->second.rbegin(); part != below->second.rend(); ++part)
            open.push_back((*part)->id);
    }
    return places;
}

Id<Component> partOf(const Records &records, RecordRef record)
{
    switch (record.type) {
    case RecordType::Component:
        return Id<Component>{record.id};
    case RecordType::Step:
        return partOfRecord<Step>(records, record.id);
    case RecordType::WorkSession:
        return partOfRecord<WorkSession>(records, record.id);
    case RecordType::Squawk:
        return partOfRecord<Squawk>(records, record.id);
    case RecordType::Fastener:
        return partOfRecord<Fastener>(records, record.id);
    case RecordType::Measurement:
        return partOfRecord<Measurement>(records, record.id);
    case RecordType::PartLine:
        return partOfRecord<PartLine>(records, record.id);
    case RecordType::MaterialUse:
        return partOfRecord<MaterialUse>(records, record.id);
    case RecordType::Equipment:
        return partOfRecord<Equipment>(records, record.id);
    case RecordType::Closing:
        return partOfRecord<Closing>(records, record.id);
    default:
        return {};
    }
}

} // namespace lastrivet::packet
