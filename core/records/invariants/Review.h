// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Description.h"
#include "core/records/Designation.h"
#include "core/records/invariants/Invariants.h"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::invariants {

/// The records whose invariants are in question, all or the touched ones, and what was found wrong.
class Review {
public:
    /// Of the whole project.
    Review(const Records &records, const Profile &profile);
    /// Of touched records, which may be gone.
    Review(const Records &records, const Profile &profile, std::span<const RecordRef> touched);
    /// The same, where it is known what the records were before, which outlives the review.
    Review(const Records &records, const Profile &profile, std::span<const RecordRef> touched,
           const Records &before);

    const Records &records() const { return m_records; }
    const Profile &profile() const { return m_profile; }
    /// The records before they were touched; null when nobody told.
    const Records *before() const { return m_before; }
    /// The records of a type under review, removed ones included; empty in a review of everything.
    const std::vector<std::int64_t> &ids(RecordType type) const { return m_ids[std::size_t(type)]; }

    /// True when a record of the type is under review, also one that was removed.
    bool touches(RecordType type) const { return m_isWhole || !ids(type).empty(); }
    template <class... Types> bool touchesAny(Types... types) const
    {
        return (touches(types) || ...);
    }
    bool covers(RecordRef record) const;
    /// True when `bears(was, is)` of a touched record of the type, each null where it was or is not
    /// there; it has to be known what the records were before.
    template <class Record, class Bears> bool anyTouched(Bears &&bears) const
    {
        const auto &touched = ids(Record::type);
        return std::any_of(touched.begin(), touched.end(), [&](std::int64_t id) {
            return bears(m_before->find(Id<Record>{id}), m_records.find(Id<Record>{id}));
        });
    }
    /// Touched records that are withdrawn or no longer there; none in a whole review.
    std::vector<RecordRef> gone() const;

    /// Calls `body` with each record of the type under review, withdrawn ones too, as a `const void
    /// *`.
    template <class Body> void eachAny(RecordType type, Body &&body) const
    {
        if (type == RecordType::Project) {
            if (touches(type))
                body(static_cast<const void *>(&m_records.project));
        } else if (m_isWhole) {
            const AnyTable &table = m_records.table(type);
            const auto &description = describe(type);
            for (const void *row = table.nextAny(0); row;
                 row = table.nextAny(idOf(description, row)))
                body(row);
        } else {
            for (const std::int64_t id : ids(type)) {
                if (const void *row = m_records.find(type, id))
                    body(row);
            }
        }
    }
    /// Calls `body` with each live record of the type under review.
    template <class Record, class Body> void each(Body &&body) const
    {
        eachAny(Record::type, [&](const void *row) {
            const auto &record = *static_cast<const Record *>(row);
            if (!record.withdrawn_on)
                body(record);
        });
    }

    /// Notes what is wrong: `{0}` in the pattern is the record, `{1}` and on are `arguments`.
    void report(RecordRef record, std::string_view pattern,
                std::vector<std::string> arguments = {});
    template <class Record>
    void report(const Record &record, std::string_view pattern,
                std::vector<std::string> arguments = {})
    {
        report(RecordRef{Record::type, record.id.value()}, pattern, std::move(arguments));
    }
    /// The record as an argument of a report.
    std::string nameOf(RecordRef record) const;
    template <class Record> std::string nameOf(Id<Record> id) const
    {
        return nameOf(RecordRef{Record::type, id.value()});
    }

    /// Everything reported, by record, each once.
    std::vector<Violation> take();

private:
    const Records &m_records;
    const Profile &m_profile;
    const Records *m_before = nullptr;
    bool m_isWhole;
    std::array<std::vector<std::int64_t>, recordTypeCount> m_ids;
    std::vector<Violation> m_violations;
};

} // namespace lastrivet::invariants
