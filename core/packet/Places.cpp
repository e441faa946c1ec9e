// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Places.h"

#include "core/packet/PartOrder.h"

namespace lastrivet::packet {

namespace {

template <class Record> Id<Component> partOfRecord(const Records &records, std::int64_t id)
{
    const Record *record = records.findLive(Id<Record>{id});
    return record ? record->component_id : Id<Component>{};
}

} // namespace

std::map<Id<Component>, std::size_t> placesInTree(const Records &records)
{
    std::map<Id<Component>, std::size_t> places{{Id<Component>{}, 0}};
    for (const PartInOrder &part : partsInOrder(records))
        places.emplace(part.part->id, places.size());
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
