// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Records.h"

#include "core/records/TableMembers.h"

#include <stdexcept>

namespace lastrivet {

template class Table<Person>;
template class Table<Component>;
template class Table<Step>;
template class Table<WorkSession>;
template class Table<Closing>;
template class Table<HoldPoint>;
template class Table<Check>;
template class Table<Inspection>;
template class Table<SignOff>;
template class Table<Squawk>;
template class Table<Deviation>;
template class Table<Bulletin>;
template class Table<Fastener>;
template class Table<Measurement>;
template class Table<Tool>;
template class Table<PartLine>;
template class Table<MaterialLot>;
template class Table<MaterialUse>;
template class Table<Media>;
template class Table<Expense>;
template class Table<CreditTask>;
template class Table<Equipment>;
template class Table<Weighing>;
template class Table<LoadingCase>;
template class Table<Envelope>;
template class Table<CertificateDocument>;
template class Table<Flight>;

Records::Records() = default;
Records::Records(const Records &) = default;
Records::Records(Records &&) noexcept = default;
Records &Records::operator=(const Records &) = default;
Records &Records::operator=(Records &&) noexcept = default;
Records::~Records() = default;
bool Records::operator==(const Records &other) const = default;

namespace {

/// The table of a type, of const or changing records alike.
template <class AnyRecords> auto &tableOf(AnyRecords &records, RecordType type)
{
    using Base = std::conditional_t<std::is_const_v<AnyRecords>, const AnyTable, AnyTable>;
    Base *const tables[] = {nullptr,
                            &records.people,
                            &records.components,
                            &records.steps,
                            &records.work_sessions,
                            &records.closings,
                            &records.hold_points,
                            &records.checks,
                            &records.inspections,
                            &records.sign_offs,
                            &records.squawks,
                            &records.deviations,
                            &records.bulletins,
                            &records.fasteners,
                            &records.measurements,
                            &records.tools,
                            &records.part_lines,
                            &records.material_lots,
                            &records.material_uses,
                            &records.media,
                            &records.expenses,
                            &records.credit_tasks,
                            &records.equipment,
                            &records.weighings,
                            &records.loading_cases,
                            &records.envelopes,
                            &records.certificate_documents,
                            &records.flights};
    if (type == RecordType::Project)
        throw std::logic_error("the project is no table");
    return *tables[std::size_t(type)];
}

} // namespace

AnyTable &Records::table(RecordType type)
{
    return tableOf(*this, type);
}

const AnyTable &Records::table(RecordType type) const
{
    return tableOf(*this, type);
}

const void *Records::find(RecordType type, std::int64_t id) const
{
    return type == RecordType::Project ? &project : table(type).findAny(id);
}

void Records::put(RecordType type, const void *record)
{
    if (type == RecordType::Project)
        project = *static_cast<const ProjectFacts *>(record);
    else
        table(type).putAny(record);
}

} // namespace lastrivet
