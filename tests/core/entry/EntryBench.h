// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryLine.h"

#include <catch2/catch.hpp>

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::test {

/// A wing with ribs, an aileron, three people and four steps, on Saturday 14 March 2026, 18:00.
struct EntryBench {
    EntryBench()
    {
        records.put(RecordType::Person, &robin);
        records.put(RecordType::Person, &irja);
        records.put(RecordType::Person, &casimir);
        records.project.builder_id = robin.id;
        part(10, "LW", "Left wing", 0);
        part(11, "LW-R3", "Rib 3", 10);
        part(12, "LW-R30", "Rib 30", 10);
        part(20, "RW", "Right wing", 0);
        part(21, "RW-R3", "Rib 3", 20);
        part(30, "LA", "Left aileron", 0);
        part(31, "", "Left flap", 0);
        part(32, "", "Right flap", 0);
        step(40, 11, 1, "12-3");
        step(41, 11, 2, "12-4");
        step(42, 21, 1, "12-4");
        step(43, 30, 7, "");
        Squawk squawk{.id = Id<Squawk>{50}, .number = "12", .component_id = Id<Component>{30}};
        squawk.title = "Overdriven rivet";
        records.put(RecordType::Squawk, &squawk);
    }

    void part(std::int64_t id, std::string code, std::string name, std::int64_t parent)
    {
        const Component part{.id = Id<Component>{id},
                             .parent_id = Id<Component>{parent},
                             .code = std::move(code),
                             .name = std::move(name)};
        records.put(RecordType::Component, &part);
    }
    void step(std::int64_t id, std::int64_t part, std::int64_t position, std::string plan)
    {
        const Step step{.id = Id<Step>{id},
                        .component_id = Id<Component>{part},
                        .position = position,
                        .title = "Step",
                        .plan_ref = std::move(plan)};
        records.put(RecordType::Step, &step);
    }
    entry::EntryReading read(std::string_view line) const
    {
        return entry::readEntry(line, records, entry::PartFinder(records), now);
    }
    WorkSession one(std::string_view line) const
    {
        const auto reading = read(line);
        REQUIRE(reading.sessions.size() == 1);
        return reading.sessions.front();
    }

    Person robin{.id = Id<Person>{1}, .name = "Robin Vale", .roles = {Role::Builder}};
    Person irja{.id = Id<Person>{2}, .name = "Irja Ostrander", .roles = {Role::Helper}};
    Person casimir{.id = Id<Person>{3}, .name = "Casimir Boyle", .roles = {Role::Helper}};
    Moment now = *Moment::parse("2026-03-14T18:00");
    Records records;
};

} // namespace lastrivet::test
