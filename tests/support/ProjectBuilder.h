// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <initializer_list>
#include <string_view>

namespace lastrivet::test {

/// The moment of an ISO text that is known to be one.
Moment on(std::string_view text);

/// Makes a valid project in memory, one short call per record.
///
/// It starts with a builder and a profile in which a builder, adviser or inspector may accept late.
/// Ids count 1, 2, 3 … over all record types.
class ProjectBuilder {
public:
    ProjectBuilder();

    Records records;
    Profile profile;
    Id<Person> builder;

    /// Adds the record with the next id, or with its own when it has one.
    template <class Record> Id<Record> add(Record record)
    {
        if (!record.id)
            record.id = Id<Record>{++m_lastId};
        else if (record.id.value() > m_lastId)
            m_lastId = record.id.value();
        records.put(Record::type, &record);
        return record.id;
    }
    /// Changes a record that is there.
    template <class Record, class Body> void change(Id<Record> id, Body &&body)
    {
        Record record = *records.find(id);
        body(record);
        records.put(Record::type, &record);
    }
    template <class Record> void withdraw(Id<Record> id)
    {
        change(id, [](Record &record) { record.withdrawn_on = on("2026-06-01"); });
    }

    Id<Person> person(std::string_view name, WordSet<Role> roles);
    Id<Component> part(std::string_view name, Id<Component> inside = {});
    Id<Step> step(Id<Component> part, std::string_view title, IdSet<Step> after = {});
    Id<WorkSession> session(Id<Component> part, std::string_view began, std::int64_t minutes);
    /// A permanent region that encloses `encloses`, or its own part when nothing is given.
    Id<Closing> closing(Id<Component> part, IdSet<Component> encloses = {});
    Id<HoldPoint> holdPoint(Id<Closing> closing, HoldPointKind kind, SignerRole signer);
    Id<SignOff> signOff(Id<HoldPoint> point, Id<Person> person, std::string_view signedOn);
    /// Numbered 1, 2, 3 …
    Id<Squawk> squawk(Id<Component> part, std::string_view foundOn);
    Id<Deviation> deviation(Id<Component> part, std::string_view raisedOn);
    Id<Bulletin> bulletin(Id<Component> part, std::string_view receivedOn);
    Id<Fastener> fastener(Id<Component> part, std::string_view place);
    Id<Measurement> measurement(Id<Component> part, std::string_view what);
    Id<MaterialUse> materialUse(Id<Component> part, Id<MaterialLot> lot, std::string_view usedOn);
    Id<MaterialLot> lot(std::string_view name);
    Id<PartLine> partLine(Id<Component> part, std::string_view name, std::int64_t quantity);
    Id<Media> photo(std::string_view takenOn, std::initializer_list<Media::Link> links);

private:
    std::int64_t m_lastId = 0;
};

} // namespace lastrivet::test
