// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/entry/CreationDays.h"

#include "core/project/JournalMarks.h"
#include "tests/support/ActBench.h"
#include "tests/support/TwoCopies.h"

#include <string>
#include <string_view>
#include <vector>

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

TEST_CASE("What an import brings meanwhile is not late, nor when it is done again")
{
    ActBench bench;
    entry::CreationDays days(*bench);
    const auto imported = (*bench).change(
        "Imported paper log.csv",
        [&](Edit &edit) { edit.put(WorkSession{.began = edit.today().plusDays(-400)}); },
        ChangeKind::Import);
    days.apply(*imported);
    CHECK_FALSE(days.isLate(*bench.records()->work_sessions.begin(), 30));
    REQUIRE((*bench).undo());
    REQUIRE((*bench).redo());
    entry::CreationDays read(*bench);
    while (read.readSome(100)) {
    }
    CHECK_FALSE(read.isLate(*bench.records()->work_sessions.begin(), 30));
}

TEST_CASE("An entry that was late in one copy is late in the other, too, after the merge")
{
    TwoCopies two;
    const auto enter = [&](std::string_view label, ChangeKind kind, std::string_view note) {
        two.later(two.kim());
        const auto done = (*two.kim())
                              .change(
                                  label,
                                  [&](Edit &edit) {
                                      WorkSession session;
                                      session.began = edit.today().plusDays(-40);
                                      session.component_id = two.wing;
                                      session.note = note;
                                      edit.put(session);
                                  },
                                  kind);
        REQUIRE(done);
    };
    enter("Logged", ChangeKind::Change, "late");
    enter("Imported log.csv", ChangeKind::Import, "imported");
    entry::CreationDays watching(*two.robin);
    while (watching.readSome(100)) {
    }
    two.robin->subscribe([&](const ChangeNotice &notice) { watching.apply(notice); });
    two.later(two.robin);
    two.robin.merge(two.kim());
    entry::CreationDays read(*two.robin);
    while (read.readSome(100)) {
    }
    REQUIRE(two.robin->records()->work_sessions.size() == 2);
    for (const WorkSession &session : two.robin->records()->work_sessions) {
        INFO(session.note);
        CHECK(read.isLate(session, 30) == (session.note == "late"));
        CHECK(watching.isLate(session, 30) == (session.note == "late"));
    }
    std::vector<std::string> late;
    for (const JournalEntry &row : two.robin->journal()) {
        if (!lateDates(row, two.robin->changesOf(row.seq), "UTC", 30).empty())
            late.push_back(row.label);
    }
    CHECK(late == std::vector<std::string>{"Logged"});
}

TEST_CASE("Imported entries are not late: their journal is elsewhere")
{
    ActBench bench;
    REQUIRE((*bench).change(
        "Imported",
        [&](Edit &edit) { edit.put(WorkSession{.began = edit.today().plusDays(-400)}); },
        ChangeKind::Import));
    entry::CreationDays days(*bench);
    while (days.readSome(100)) {
    }
    CHECK_FALSE(days.isLate(*bench.records()->work_sessions.begin(), 30));
}

} // namespace lastrivet::test
