// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Region.h"

#include "core/packet/Places.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

template <class Value> void makeSet(std::vector<Value> &values)
{
    std::sort(values.begin(), values.end());
    values.erase(std::unique(values.begin(), values.end()), values.end());
}

template <class Record> IdSet<Component> partsOfRecord(const Records &records, std::int64_t id)
{
    const Record *record = records.findLive(Id<Record>{id});
    return record ? record->component_ids : IdSet<Component>{};
}

/// The closing that a record of a closing belongs to; none for other records.
Id<Closing> closingOf(const Records &records, RecordRef record)
{
    if (record.type == RecordType::Closing)
        return Id<Closing>{record.id};
    if (const HoldPoint *point = record.type == RecordType::HoldPoint
                                     ? records.findLive(Id<HoldPoint>{record.id})
                                     : nullptr)
        return point->closing_id;
    if (const Check *check =
            record.type == RecordType::Check ? records.findLive(Id<Check>{record.id}) : nullptr)
        return check->closing_id;
    if (const SignOff *signOff =
            record.type == RecordType::SignOff ? records.findLive(Id<SignOff>{record.id}) : nullptr)
        return closingOf(records, {RecordType::HoldPoint, signOff->hold_point_id.value()});
    return {};
}

} // namespace

Region::Region(const Records &records, const readiness::Answer &answer,
               const IdSet<Closing> &chosen)
    : m_records(&records)
    , m_asOf(answer.as_of)
    , m_places(placesInTree(records))
{
    for (const Id<Closing> id : chosen) {
        const readiness::ClosingAnswer *closing = answer.closing(id);
        const Closing *record = records.findLive(id);
        if (!closing || !record)
            continue;
        m_chosen.push_back({record, closing});
        m_isWholeAircraft |= record->scope == ClosingScope::Aircraft;
        m_parts.insert(m_parts.end(), closing->reach.begin(), closing->reach.end());
        for (const readiness::Blocker &blocker : closing->blockers)
            m_named.push_back(blocker.record);
    }
    makeSet(m_parts);
    makeSet(m_named);
}

Region Region::ofWholeAircraft(const Records &records, const readiness::Answer &answer)
{
    IdSet<Closing> all;
    for (const Closing &closing : records.closings)
        all.push_back(closing.id);
    Region region(records, answer, all);
    region.m_isWholeAircraft = true;
    for (const auto &[part, place] : region.m_places)
        region.m_parts.push_back(part);
    makeSet(region.m_parts);
    return region;
}

bool Region::isChosen(Id<Closing> id) const
{
    return std::any_of(m_chosen.begin(), m_chosen.end(),
                       [id](const Chosen &chosen) { return chosen.closing->id == id; });
}

bool Region::holds(Id<Component> part) const
{
    return std::binary_search(m_parts.begin(), m_parts.end(), part);
}

bool Region::holdsAny(const IdSet<Component> &parts) const
{
    if (parts.empty())
        return m_isWholeAircraft;
    return std::any_of(parts.begin(), parts.end(),
                       [this](Id<Component> part) { return holds(part); });
}

bool Region::holds(const Squawk &squawk) const
{
    return squawk.component_id ? holds(squawk.component_id) : m_isWholeAircraft;
}

bool Region::isNamedByBlocker(RecordRef record) const
{
    return std::binary_search(m_named.begin(), m_named.end(), record);
}

bool Region::holds(RecordRef record) const
{
    if (record.type == RecordType::Deviation)
        return m_records->findLive(Id<Deviation>{record.id}) &&
               holdsAny(partsOfRecord<Deviation>(*m_records, record.id));
    if (record.type == RecordType::Bulletin)
        return m_records->findLive(Id<Bulletin>{record.id}) &&
               holdsAny(partsOfRecord<Bulletin>(*m_records, record.id));
    if (record.type == RecordType::Squawk) {
        const Squawk *squawk = m_records->findLive(Id<Squawk>{record.id});
        return squawk && holds(*squawk);
    }
    const Id<Closing> closing = closingOf(*m_records, record);
    return (closing && isChosen(closing)) || holds(partOf(record));
}

Id<Component> Region::partOf(RecordRef record) const
{
    return packet::partOf(*m_records, record);
}

std::optional<Moment> Region::ifHappened(const std::optional<Moment> &moment) const
{
    return happened(moment, m_asOf) ? moment : std::nullopt;
}

std::size_t Region::placeOf(Id<Component> part) const
{
    const auto place = m_places.find(part);
    return place == m_places.end() ? m_places.size() : place->second;
}

} // namespace lastrivet::packet
