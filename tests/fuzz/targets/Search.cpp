// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/RecordPointer.h"
#include "core/storage/Migration.h"
#include "core/storage/Schema.h"
#include "core/storage/SearchIndex.h"
#include "tests/fuzz/Targets.h"
#include "tests/support/WingProject.h"

namespace lastrivet::fuzz {

namespace {

struct Indexed {
    Indexed()
    {
        storage::runSteps(database);
        const test::WingProject wing;
        for (const auto &part : wing.records.components)
            index.put({RecordType::Component, part.id.value()}, &part);
        for (const auto &squawk : wing.records.squawks)
            index.put({RecordType::Squawk, squawk.id.value()}, &squawk);
        for (const auto &session : wing.records.work_sessions)
            index.put({RecordType::WorkSession, session.id.value()}, &session);
    }

    storage::Database database;
    storage::SearchIndex index{database};
};

} // namespace

/// Nothing that is typed into the finder is an operator of the index.
void search(Input input)
{
    static const Indexed indexed;
    constexpr std::size_t most = 20;
    promised(indexed.index.search(textOf(input), most).size() <= most);
    if (const auto record = readPointer(textOf(input)))
        promised(readPointer(pointerTo(*record)) == record);
}

} // namespace lastrivet::fuzz
