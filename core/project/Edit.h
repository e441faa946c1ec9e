// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Error.h"
#include "core/base/Moment.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <string>
#include <string_view>

namespace lastrivet {

/// The records while they are being changed, one record at a time; all of it is kept, or nothing.
///
/// Passed to the body of `Project::change`, and valid only there.
class Edit {
public:
    virtual ~Edit() = default;

    /// The records with this edit's changes so far.
    virtual const Records &records() const = 0;
    virtual const Profile &profile() const = 0;
    /// The project goes by this profile from now on, and keeps a copy of it.
    virtual void useProfile(const Profile &profile) = 0;
    /// Local workshop time, to the minute.
    virtual Moment now() const = 0;
    Moment today() const { return now().dayOnly(); }
    /// An id that no copy of this project has.
    virtual std::int64_t newId() = 0;
    /// Inserts the record, which has an id, or replaces the one with that id. `record` points to
    /// the struct of `type`.
    virtual void putAny(RecordType type, const void *record) = 0;

    /// Inserts the record, or replaces the one with its id; a record without an id gets a new one.
    template <class Record> Id<Record> put(Record record)
    {
        if (!record.id)
            record.id = Id<Record>{newId()};
        putAny(Record::type, &record);
        return record.id;
    }
    void put(const ProjectFacts &facts) { putAny(RecordType::Project, &facts); }

    /// A record as it stands; valid until the next `put`. Throws a `Fault` when it is gone: an undo
    /// may have removed it while a question about it was open.
    const void *existing(RecordRef record) const
    {
        const void *found = records().find(record.type, record.id);
        if (!found)
            throw Fault("What was to be changed is not there any more.");
        return found;
    }
    template <class Record> const Record &existing(Id<Record> id) const
    {
        return *static_cast<const Record *>(existing(RecordRef{Record::type, id.value()}));
    }

    /// Changes an existing record: `body` edits a copy, which is then put. Throws as `existing`.
    template <class Record, class Body> void update(Id<Record> id, Body &&body)
    {
        Record copy = existing(id);
        body(copy);
        putAny(Record::type, &copy);
    }

    /// Marks a record as withdrawn, so that it counts nowhere; it stays in the database.
    template <class Record> void withdraw(Id<Record> id, std::string_view why)
    {
        update(id, [&](Record &record) {
            record.withdrawn_on = now();
            record.withdrawn_why = std::string(why);
        });
    }
};

/// The next number that people use in speech ("squawk 12"): one more than the greatest of all
/// records, withdrawn ones included. For `Squawk`, `Deviation` and `Bulletin`.
template <class Record> std::string nextNumber(const Records &records);

} // namespace lastrivet
