// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/CreationDays.h"

#include "tests/support/ActBench.h"

namespace lastrivet::test {

TEST_CASE("An entry is late when the journal has it later than the profile allows")
{
    ActBench bench;
    Id<WorkSession> fresh;
    Id<WorkSession> old;
    bench.change([&](Edit &edit) {
        fresh = edit.put(WorkSession{.began = edit.today()});
        old = edit.put(WorkSession{.began = edit.today().plusDays(-31)});
    });
    entry::CreationDays days(*bench);
    while (days.readSome(1)) {
    }
    CHECK(days.createdOn(fresh) == (*bench).today());
    CHECK_FALSE(days.isLate(*bench.records()->find(fresh), 30));
    CHECK(days.isLate(*bench.records()->find(old), 30));
    CHECK_FALSE(days.isLate(*bench.records()->find(old), 31));
}

TEST_CASE("A change that is made meanwhile is taken in without reading the journal again")
{
    ActBench bench;
    entry::CreationDays days(*bench);
    const auto result = (*bench).change(
        "Logged", [&](Edit &edit) { edit.put(WorkSession{.began = edit.today().plusDays(-40)}); });
    days.apply(*result);
    const WorkSession &session = *bench.records()->work_sessions.begin();
    CHECK(days.isLate(session, 30));
}

TEST_CASE("Imported entries are not late: their journal is elsewhere")
{
    ActBench bench;
    (*bench).change(
        "Imported",
        [&](Edit &edit) { edit.put(WorkSession{.began = edit.today().plusDays(-400)}); },
        ChangeKind::Import);
    entry::CreationDays days(*bench);
    while (days.readSome(100)) {
    }
    CHECK_FALSE(days.isLate(*bench.records()->work_sessions.begin(), 30));
}

} // namespace lastrivet::test
