// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "tests/support/TestPictures.h"
#include "tests/support/TwoCopies.h"

#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>

#include <chrono>
#include <map>
#include <set>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

namespace {

Id<Media> takeIn(ProjectCopy &copy, const std::filesystem::path &file, Id<Component> part)
{
    const auto report =
        evidence::takeIn(*copy, {{file, {}, {{RecordType::Component, part.value()}}, {}, {}, {}}},
                         1, {}, {}, ChangeKind::Change);
    REQUIRE(report.failures.empty());
    return report.taken.empty() ? report.already_there.at(0) : report.taken.front();
}

} // namespace

TEST_CASE("A photograph that both took in becomes one, with both links, and files are copied")
{
    TwoCopies two;
    const auto both = test::testPicture("grey.jpg");
    const auto mine = test::testPicture("glass.png");
    const auto rib = two.part(two.robin, "Rib");
    const auto spar = two.part(two.kim(), "Spar");
    two.later(two.robin);
    const auto first = takeIn(two.robin, both, rib);
    two.later(two.kim());
    const auto second = takeIn(two.kim(), both, spar);
    const auto kims = takeIn(two.kim(), mine, spar);
    two.later(two.kim());
    two.kim().change("Check", [&](Edit &edit) {
        Expense receipt;
        receipt.spent_on = edit.today();
        receipt.what = "Rivets";
        receipt.amount = 1250;
        receipt.currency = "EUR";
        receipt.media_id = second;
        edit.put(receipt);
    });
    two.mergeBoth();
    const auto &records = *two.robin->records();
    CHECK_FALSE(records.find(second));
    REQUIRE(records.find(first));
    CHECK(records.find(first)->links.size() == 2);
    CHECK(records.expenses.begin()->media_id == first);
    CHECK(test::readBytes(two.robin.folder() / records.find(kims)->file) == test::readBytes(mine));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("Before the merge's row stand the other's changes, with their hash, person and time")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    const auto made = two.kim()->journal().back();
    two.note(two.robin, "Primed");
    two.later(two.robin);
    two.robin.merge(two.kim());
    const auto journal = two.robin->journal();
    REQUIRE(journal.size() > 2);
    const auto &carried = journal[journal.size() - 2];
    CHECK(carried.kind == ChangeKind::Carried);
    CHECK(carried.change_id == made.change_id);
    CHECK(carried.who == "Kim");
    CHECK(carried.label == made.label);
    CHECK(carried.stamp == made.stamp);
    CHECK(journal.back().kind == ChangeKind::Merge);
    CHECK(journal.back().stamp > carried.stamp);
    CHECK_FALSE(two.robin->undo());
}

TEST_CASE("A paper that was printed from the other copy is dated by the merged journal as well")
{
    TwoCopies two;
    const auto hash = two.kim()->notePrinted("Packet");
    two.robin.merge(two.kim());
    const auto journal = two.robin->journal();
    CHECK(std::any_of(journal.begin(), journal.end(), [&](const JournalEntry &entry) {
        return entry.kind == ChangeKind::Carried && entry.label == "Packet" &&
               entry.origin_hash == hash;
    }));
}

TEST_CASE("Another project, a file that is none, and a merge with itself change nothing")
{
    TwoCopies two;
    ProjectCopy stranger("Sascha");
    const auto rows = two.robin->journal().size();
    CHECK_THROWS_WITH(two.robin->merge(stranger.folder()),
                      Catch::Contains("not copies of one project"));
    const TemporaryFolder folder;
    test::writeText(folder.path() / "note.txt", "hello");
    CHECK_THROWS_AS(two.robin->merge(folder.path() / "note.txt"), UnreadableInput);
    CHECK_THROWS_AS(two.robin->merge(folder.path()), UnreadableInput);
    CHECK_THROWS_AS(two.robin->merge(folder.path() / "nowhere"), Fault);
    CHECK(two.robin.merge(two.robin).changes == 0);
    CHECK(two.robin->journal().size() == rows);
}

TEST_CASE("A copy whose journal does not hold is refused, with the row that is wrong")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    const auto rows = two.robin->journal().size();
    const auto newest = std::to_string(two.kim()->journal().back().seq);
    const auto refusalAfter = [&](const std::string &tampering) -> std::string {
        const TemporaryFolder folder;
        const auto place = folder.path() / "Copy.lastrivet";
        std::filesystem::copy(two.kim().folder(), place, std::filesystem::copy_options::recursive);
        SQLite::Database((place / "records.db").string(), SQLite::OPEN_READWRITE)
            .exec(
                "DROP TRIGGER journal_is_never_changed; DROP TRIGGER journal_is_never_shortened;" +
                tampering);
        try {
            if (const auto merged = two.robin->merge(place); !merged)
                return "refused: " + english(merged.reason());
        } catch (const UnreadableInput &refused) {
            return refused.what();
        }
        return {};
    };
    CHECK(refusalAfter("UPDATE journal SET who='Alex' WHERE seq=" + newest) ==
          "The other copy's journal is broken, so nothing was merged: its row " + newest +
              " (“Renamed to Left wing”) was altered.");
    CHECK_THAT(refusalAfter("DELETE FROM journal WHERE seq=2"),
               Catch::EndsWith("does not follow the row before it."));
    CHECK(two.robin->journal().size() == rows);
    CHECK(two.wingOf(two.robin).name == "Wing");
    CHECK(refusalAfter("").empty());
    CHECK(two.wingOf(two.robin).name == "Left wing");
}

TEST_CASE("A copy whose clock ran in a time that no calendar has is refused")
{
    TwoCopies two;
    two.kim().clock().set(std::chrono::sys_days{std::chrono::year{2300} / 1 / 1});
    two.kim().change("Renamed", [&](Edit &edit) {
        edit.update(two.wing, [](Component &part) { part.name = "Left wing"; });
    });
    CHECK_THROWS_WITH(two.robin->merge(two.kim().folder()),
                      Catch::EndsWith("(“Renamed”) is of a time after the year 2199."));
    CHECK(two.wingOf(two.robin).name == "Wing");
}

TEST_CASE("The other copy is only read")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    const auto state = [&] {
        std::map<std::string, std::vector<std::uint8_t>> files;
        for (const auto &entry :
             std::filesystem::recursive_directory_iterator(two.kim().folder())) {
            if (entry.is_regular_file())
                files[entry.path().string()] = test::readBytes(entry.path());
        }
        return files;
    };
    const auto before = state();
    two.robin.merge(two.kim());
    CHECK(state() == before);
}

TEST_CASE("A part that another copy's record names stays with all parts around it")
{
    TwoCopies two;
    Id<Component> box;
    Id<Component> rib;
    two.later(two.robin);
    two.robin.change("Box and rib", [&](Edit &edit) {
        Component part;
        part.name = "Box";
        box = edit.put(part);
        part.name = "Rib";
        part.parent_id = box;
        rib = edit.put(part);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    // Once the parts go before the squawk names the inner one, once after.
    const bool isFirst = GENERATE(true, false);
    if (isFirst) {
        two.later(two.robin);
        REQUIRE(two.robin->undo());
    }
    two.later(sascha);
    sascha.change("Squawk", [&](Edit &edit) {
        auto made = two.newSquawk(edit, "Crack in the rib");
        made.component_id = rib;
        edit.put(made);
    });
    if (!isFirst) {
        two.later(two.robin);
        REQUIRE(two.robin->undo());
    }
    two.robin.merge(sascha);
    REQUIRE(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(rib)->parent_id == box);
    CHECK(two.robin->records()->find(box));
    const auto conflicts = two.robin->conflicts();
    CHECK(std::all_of(conflicts.begin(), conflicts.end(), [](const auto &conflict) {
        return conflict.kind == ConflictKind::Existence;
    }));
}

TEST_CASE("A squawk that another copy put into a list stays when its making was taken back")
{
    TwoCopies two;
    const auto squawk = two.find(two.robin, "Short bolt");
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(sascha);
    sascha.change("Access", [&](Edit &edit) {
        edit.update(squawk, [&](Squawk &made) { made.needs_access_to = {two.wing}; });
    });
    two.later(two.robin);
    REQUIRE(two.robin->undo());
    two.robin.merge(sascha);
    REQUIRE(two.robin->records()->find(squawk));
    CHECK(two.robin->records()->find(squawk)->needs_access_to == IdSet<Component>{two.wing});
}

TEST_CASE("Whom another copy made the builder of the project stays when taken back")
{
    TwoCopies two;
    Id<Person> bo;
    two.later(two.robin);
    two.robin.change("Bo", [&](Edit &edit) {
        Person person;
        person.name = "Bo";
        person.roles = {Role::Builder};
        bo = edit.put(person);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(sascha);
    sascha.change("Builder", [&](Edit &edit) {
        auto facts = edit.records().project;
        facts.builder_id = bo;
        edit.put(facts);
    });
    two.later(two.robin);
    REQUIRE(two.robin->undo());
    two.robin.merge(sascha);
    CHECK(two.robin->records()->find(bo));
    CHECK(two.robin->records()->project.builder_id == bo);
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().kind == ConflictKind::Existence);
}

TEST_CASE("Two lines of a list that both lose are two things to decide")
{
    TwoCopies two;
    two.later(two.robin);
    Id<Person> bo;
    Id<WorkSession> session;
    two.robin.change("Work", [&](Edit &edit) {
        Person person;
        person.name = "Bo";
        person.roles = {Role::Helper};
        bo = edit.put(person);
        WorkSession work;
        work.began = edit.today();
        work.minutes = Minutes{60};
        work.component_id = two.wing;
        work.workers = {{edit.records().people.begin()->id, Minutes{60}}, {bo, Minutes{60}}};
        session = edit.put(work);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    const auto minutes = [&](ProjectCopy &copy, std::int64_t worked) {
        two.later(copy);
        copy.change("Minutes", [&](Edit &edit) {
            edit.update(session, [&](WorkSession &work) {
                for (auto &worker : work.workers)
                    worker.minutes = Minutes{worked};
            });
        });
    };
    minutes(two.robin, 50);
    ProjectCopy alex(two.robin, "Alex");
    minutes(sascha, 40);
    two.robin.merge(sascha);
    for (const auto &worker : two.robin->records()->find(session)->workers)
        CHECK(worker.minutes == Minutes{40});
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 2);
    CHECK(conflicts[0].lost == "50");
    CHECK(conflicts[1].lost == "50");
    // Who went on from one of the two has settled that one alone.
    two.later(alex);
    alex.change("Of Bo", [&](Edit &edit) {
        edit.update(session, [&](WorkSession &work) {
            for (auto &worker : work.workers) {
                if (worker.person_id == bo)
                    worker.minutes = Minutes{45};
            }
        });
    });
    two.robin.merge(alex);
    std::multiset<std::string> lost;
    for (const auto &conflict : two.robin->conflicts())
        lost.insert(conflict.lost.value_or(""));
    CHECK(lost == std::multiset<std::string>{"40", "50"});
}
