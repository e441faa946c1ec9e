// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Bulletin.h"
#include "core/records/CertificateDocument.h"
#include "core/records/Check.h"
#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/CreditTask.h"
#include "core/records/Deviation.h"
#include "core/records/Envelope.h"
#include "core/records/Equipment.h"
#include "core/records/Expense.h"
#include "core/records/Fastener.h"
#include "core/records/Flight.h"
#include "core/records/HoldPoint.h"
#include "core/records/Inspection.h"
#include "core/records/LoadingCase.h"
#include "core/records/MaterialLot.h"
#include "core/records/MaterialUse.h"
#include "core/records/Measurement.h"
#include "core/records/Media.h"
#include "core/records/PartLine.h"
#include "core/records/Person.h"
#include "core/records/ProjectFacts.h"
#include "core/records/SignOff.h"
#include "core/records/Squawk.h"
#include "core/records/Step.h"
#include "core/records/Table.h"
#include "core/records/Tool.h"
#include "core/records/Weighing.h"
#include "core/records/WorkSession.h"

#include <string>

namespace lastrivet {

// Compiled once, in Records.cpp.
extern template class Table<Person>;
extern template class Table<Component>;
extern template class Table<Step>;
extern template class Table<WorkSession>;
extern template class Table<Closing>;
extern template class Table<HoldPoint>;
extern template class Table<Check>;
extern template class Table<Inspection>;
extern template class Table<SignOff>;
extern template class Table<Squawk>;
extern template class Table<Deviation>;
extern template class Table<Bulletin>;
extern template class Table<Fastener>;
extern template class Table<Measurement>;
extern template class Table<Tool>;
extern template class Table<PartLine>;
extern template class Table<MaterialLot>;
extern template class Table<MaterialUse>;
extern template class Table<Media>;
extern template class Table<Expense>;
extern template class Table<CreditTask>;
extern template class Table<Equipment>;
extern template class Table<Weighing>;
extern template class Table<LoadingCase>;
extern template class Table<Envelope>;
extern template class Table<CertificateDocument>;
extern template class Table<Flight>;

/// Everything a project knows at one moment of its history: a snapshot, cheap to copy and to keep.
struct Records {
    ProjectFacts project;
    /// The rule profile that the project was made with, as JSON text; empty when none is kept.
    std::string profile_copy;
    Table<Person> people;
    Table<Component> components;
    Table<Step> steps;
    Table<WorkSession> work_sessions;
    Table<Closing> closings;
    Table<HoldPoint> hold_points;
    Table<Check> checks;
    Table<Inspection> inspections;
    Table<SignOff> sign_offs;
    Table<Squawk> squawks;
    Table<Deviation> deviations;
    Table<Bulletin> bulletins;
    Table<Fastener> fasteners;
    Table<Measurement> measurements;
    Table<Tool> tools;
    Table<PartLine> part_lines;
    Table<MaterialLot> material_lots;
    Table<MaterialUse> material_uses;
    Table<Media> media;
    Table<Expense> expenses;
    Table<CreditTask> credit_tasks;
    Table<Equipment> equipment;
    Table<Weighing> weighings;
    Table<LoadingCase> loading_cases;
    Table<Envelope> envelopes;
    Table<CertificateDocument> certificate_documents;
    Table<Flight> flights;

    /// The table of any record type but the project.
    AnyTable &table(RecordType type);
    const AnyTable &table(RecordType type) const;
    /// The record, or null; the project for type `project`, whatever the id.
    const void *find(RecordType type, std::int64_t id) const;
    /// Inserts or replaces a record of the type.
    void put(RecordType type, const void *record);

    template <class Record> const Table<Record> &of() const
    {
        return static_cast<const Table<Record> &>(table(Record::type));
    }
    template <class Record> const Record *find(Id<Record> id) const
    {
        return of<Record>().find(id);
    }
    /// The record when it exists and is not withdrawn, else null.
    template <class Record> const Record *findLive(Id<Record> id) const
    {
        const Record *record = find(id);
        return record && !record->withdrawn_on ? record : nullptr;
    }

    Records();
    Records(const Records &);
    Records(Records &&) noexcept;
    Records &operator=(const Records &);
    Records &operator=(Records &&) noexcept;
    ~Records();

    bool operator==(const Records &other) const;
};

} // namespace lastrivet
