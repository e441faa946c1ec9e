// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Strays.h"

#include <cstddef>

namespace lastrivet::readiness {

namespace {

/// Looks through tables until it has found one.
class Search {
public:
    explicit Search(const Records &records)
        : m_records(records)
    {
    }

    template <class Record, class Named>
    void look(const Table<Record> &table, Id<Named> Record::*field)
    {
        Id<Named> known;
        for (const Record &record : table) {
            if (m_found)
                return;
            // Records of one part often stand side by side.
            if (record.withdrawn_on || record.*field == known || !(record.*field))
                continue;
            check(record, record.*field);
            known = record.*field;
        }
    }
    template <class Record, class Named>
    void look(const Table<Record> &table, IdSet<Named> Record::*field)
    {
        for (const Record &record : table) {
            if (record.withdrawn_on)
                continue;
            for (const Id<Named> named : record.*field)
                check(record, named);
        }
    }

    const std::optional<Stray> &found() const { return m_found; }

private:
    template <class Record, class Named> void check(const Record &record, Id<Named> named)
    {
        if (!m_found && !m_records.findLive(named))
            m_found = Stray{{Record::type, record.id.value()}, {Named::type, named.value()}};
    }

    const Records &m_records;
    std::optional<Stray> m_found;
};

bool liesInItself(const Records &records, const Component &part)
{
    Id<Component> above = part.parent_id;
    for (std::size_t steps = 0; above && steps <= records.components.size(); ++steps) {
        if (above == part.id)
            return true;
        const Component *next = records.findLive(above);
        above = next ? next->parent_id : Id<Component>{};
    }
    return false;
}

} // namespace

std::optional<Stray> firstStray(const Records &records)
{
    Search search(records);
    search.look(records.components, &Component::parent_id);
    search.look(records.closings, &Closing::component_id);
    search.look(records.closings, &Closing::encloses);
    search.look(records.hold_points, &HoldPoint::closing_id);
    search.look(records.checks, &Check::closing_id);
    search.look(records.sign_offs, &SignOff::hold_point_id);
    search.look(records.sign_offs, &SignOff::person_id);
    search.look(records.steps, &Step::component_id);
    search.look(records.work_sessions, &WorkSession::component_id);
    search.look(records.squawks, &Squawk::component_id);
    search.look(records.deviations, &Deviation::component_ids);
    search.look(records.bulletins, &Bulletin::component_ids);
    search.look(records.fasteners, &Fastener::component_id);
    search.look(records.measurements, &Measurement::component_id);
    search.look(records.part_lines, &PartLine::component_id);
    search.look(records.material_uses, &MaterialUse::component_id);
    return search.found();
}

std::optional<Id<Component>> firstRing(const Records &records)
{
    for (const Component &part : records.components) {
        // Around a ring ids cannot only fall from each part to the one that it lies in.
        if (!part.withdrawn_on && part.parent_id >= part.id && liesInItself(records, part))
            return part.id;
    }
    return std::nullopt;
}

} // namespace lastrivet::readiness
