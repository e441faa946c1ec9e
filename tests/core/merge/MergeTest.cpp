// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/Error.h"
#include "core/evidence/IntakeStore.h"
#include "core/verify/Verification.h"
#include "tests/support/ProjectCopies.h"
#include "tests/support/TestPictures.h"

#include <catch2/catch.hpp>

#include <map>

using namespace lastrivet;
using test::ProjectCopy;

namespace {

/// Two computers that begin with the same project: a wing with a squawk on it.
struct TwoCopies {
    ProjectCopy robin{"Robin"};
    Id<Component> wing;
    Id<Squawk> squawk;
    std::unique_ptr<ProjectCopy> kims;

    TwoCopies()
    {
        robin.change("A beginning", [this](Edit &edit) {
            Person builder;
            builder.name = "Robin";
            builder.roles = {Role::Builder};
            edit.put(builder);
            Component part;
            part.name = "Wing";
            wing = edit.put(part);
            squawk = edit.put(newSquawk(edit, "Overdriven rivet"));
        });
        kims = std::make_unique<ProjectCopy>(robin, "Kim");
        later(robin);
    }

    Squawk newSquawk(const Edit &edit, std::string_view title) const
    {
        Squawk made;
        made.number = nextNumber<Squawk>(edit.records());
        made.title = title;
        made.component_id = wing;
        made.found_on = edit.today();
        return made;
    }

    ProjectCopy &kim() { return *kims; }
    /// The copy's clock goes on, beyond everything done so far.
    void later(ProjectCopy &copy)
    {
        m_time += std::chrono::minutes{10};
        copy.clock().set(test::FakeClock{}.now() + m_time);
    }
    void rename(ProjectCopy &copy, std::string_view name)
    {
        later(copy);
        copy.change("Renamed to " + std::string(name), [&](Edit &edit) {
            edit.update(wing, [&](Component &part) { part.name = name; });
        });
    }
    void note(ProjectCopy &copy, std::string_view note)
    {
        later(copy);
        copy.change("Note", [&](Edit &edit) {
            edit.update(wing, [&](Component &part) { part.note = note; });
        });
    }
    Id<Component> part(ProjectCopy &copy, std::string_view name, std::string_view code = {})
    {
        later(copy);
        Component part;
        part.name = name;
        part.code = code;
        Id<Component> id;
        copy.change("Part " + part.name, [&](Edit &edit) { id = edit.put(part); });
        return id;
    }
    Id<Squawk> find(ProjectCopy &copy, std::string_view title)
    {
        later(copy);
        Id<Squawk> id;
        copy.change("Squawk", [&](Edit &edit) { id = edit.put(newSquawk(edit, title)); });
        return id;
    }
    /// Both take each other's changes in, and must come to the same.
    void mergeBoth()
    {
        later(robin);
        later(kim());
        ProjectCopy first(robin, "Robin");
        kim().merge(robin);
        robin.merge(kim());
        first.merge(kim());
        REQUIRE(*robin->records() == *kim()->records());
        REQUIRE(*first->records() == *kim()->records());
        for (auto *copy : {&robin, &kim()}) {
            for (const auto &finding : verify(copy->folder()).findings)
                FAIL_CHECK(finding.text);
        }
    }
    const Component &wingOf(ProjectCopy &copy) { return *copy->records()->components.find(wing); }

private:
    std::chrono::milliseconds m_time{0};
};

Id<Media> takeIn(ProjectCopy &copy, const std::filesystem::path &file, Id<Component> part)
{
    const auto report = evidence::takeIn(
        *copy, {{file, {}, {{RecordType::Component, part.value()}}, {}, {}, {}}}, 1, {}, {},
        ChangeKind::Change);
    REQUIRE(report.failures.empty());
    return report.taken.empty() ? report.already_there.at(0) : report.taken.front();
}

} // namespace

TEST_CASE("What two people did to different things is all there after a merge")
{
    TwoCopies two;
    two.rename(two.robin, "Left wing");
    two.note(two.kim(), "Skins on order");
    const auto rib = two.part(two.robin, "Rib");
    const auto spar = two.part(two.kim(), "Spar");
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).name == "Left wing");
    CHECK(two.wingOf(two.robin).note == "Skins on order");
    CHECK(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(spar));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("Of two values of one field the later stands, and what lost can be taken instead")
{
    TwoCopies two;
    two.rename(two.robin, "Port wing");
    two.rename(two.kim(), "Left wing");
    two.mergeBoth();
    CHECK(two.wingOf(two.robin).name == "Left wing");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    const auto &conflict = conflicts.front();
    CHECK(conflict.kind == ConflictKind::Value);
    CHECK(conflict.record == RecordRef{RecordType::Component, two.wing.value()});
    CHECK(conflict.field == "name");
    CHECK(conflict.kept == "\"Left wing\"");
    CHECK(conflict.lost == "\"Port wing\"");
    CHECK(conflict.kept_by.who == "Kim");
    CHECK(conflict.lost_by.who == "Robin");
    CHECK(conflict.lost_by.label == "Renamed to Port wing");
    REQUIRE(two.robin->decide(conflict.id, ConflictDecision::Taken));
    CHECK(two.wingOf(two.robin).name == "Port wing");
    CHECK_FALSE(two.robin->decide(conflict.id, ConflictDecision::Kept));
    two.mergeBoth();
    CHECK(two.wingOf(two.kim()).name == "Port wing");
    CHECK(two.kim()->conflicts().front().decision == ConflictDecision::Taken);
    REQUIRE(two.robin->conflicts().size() == 1);
}

TEST_CASE("A decision that changes nothing is a change too, can be undone, and travels")
{
    TwoCopies two;
    two.rename(two.robin, "Port wing");
    two.rename(two.kim(), "Left wing");
    two.mergeBoth();
    const auto id = two.kim()->conflicts().front().id;
    REQUIRE(two.kim()->decide(id, ConflictDecision::Kept));
    REQUIRE(two.kim()->undo());
    CHECK_FALSE(two.kim()->conflicts().front().decision);
    REQUIRE(two.kim()->redo());
    two.mergeBoth();
    CHECK(two.robin->conflicts().front().decision == ConflictDecision::Kept);
    CHECK(two.wingOf(two.robin).name == "Left wing");
}

TEST_CASE("The same value from both sides, and a value that its author changed again, are no conflicts")
{
    TwoCopies two;
    two.rename(two.robin, "Left wing");
    two.rename(two.kim(), "Left wing");
    two.note(two.robin, "One");
    two.note(two.robin, "Two");
    two.mergeBoth();
    CHECK(two.robin->conflicts().empty());
    // Robin's first word was overridden by Kim's, and that by Robin's second: one thing to decide.
    two.note(two.robin, "Three");
    two.note(two.kim(), "From Kim");
    two.note(two.robin, "Four");
    two.mergeBoth();
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().lost == "\"From Kim\"");
    CHECK(two.wingOf(two.robin).note == "Four");
}

TEST_CASE("Of two squawks with one number the earlier keeps it and the later gets a letter")
{
    TwoCopies two;
    const auto first = two.find(two.robin, "Gouge in the spar cap");
    const auto second = two.find(two.kim(), "Short bolt");
    two.mergeBoth();
    CHECK(two.robin->records()->find(first)->number == "2");
    CHECK(two.robin->records()->find(second)->number == "2b");
    CHECK(two.robin->conflicts().empty());
    const auto next = two.find(two.kim(), "Loose fairing");
    CHECK(two.kim()->records()->find(next)->number == "3");
    two.mergeBoth();
    CHECK(two.robin->records()->find(second)->number == "2b");
}

TEST_CASE("Prerequisites that two people added to one record are both there")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    two.mergeBoth();
    for (auto *copy : {&two.robin, &two.kim()}) {
        two.later(*copy);
        copy->change("Access", [&](Edit &edit) {
            edit.update(two.squawk, [&](Squawk &squawk) {
                squawk.needs_access_to = {copy == &two.robin ? rib : two.wing};
            });
        });
    }
    two.mergeBoth();
    CHECK(two.robin->records()->find(two.squawk)->needs_access_to.size() == 2);
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("What one took back and the other went on with stays, and is told")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    REQUIRE(two.robin->undo());
    two.later(sascha);
    sascha.change("Note", [&](Edit &edit) {
        edit.update(rib, [](Component &part) { part.note = "Drilled"; });
    });
    ProjectCopy other(sascha, "Sascha");
    other.merge(two.robin);
    two.robin.merge(sascha);
    REQUIRE(*other->records() == *two.robin->records());
    REQUIRE(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(rib)->note == "Drilled");
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().kind == ConflictKind::Existence);
    REQUIRE(two.robin->decide(two.robin->conflicts().front().id, ConflictDecision::Taken));
    CHECK(two.robin->records()->find(rib)->withdrawn_on);
}

TEST_CASE("What one took back and the other left alone is gone")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    REQUIRE(two.robin->undo());
    two.later(sascha);
    sascha.change("Note", [&](Edit &edit) {
        edit.update(two.wing, [](Component &part) { part.note = "Drilled"; });
    });
    two.robin.merge(sascha);
    CHECK_FALSE(two.robin->records()->find(rib));
    CHECK(two.robin->conflicts().empty());
}

TEST_CASE("A part that another copy's record names stays when it was taken back")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    ProjectCopy sascha(two.robin, "Sascha");
    two.later(sascha);
    Id<Squawk> squawk;
    sascha.change("Squawk", [&](Edit &edit) {
        auto made = two.newSquawk(edit, "Crack in the rib");
        made.component_id = rib;
        squawk = edit.put(made);
    });
    // Once the part goes before the squawk names it, once after.
    const bool isFirst = GENERATE(true, false);
    if (!isFirst)
        two.later(two.robin);
    REQUIRE(two.robin->undo());
    ProjectCopy other(sascha, "Sascha");
    other.merge(two.robin);
    two.robin.merge(sascha);
    REQUIRE(*other->records() == *two.robin->records());
    CHECK(two.robin->records()->find(rib));
    CHECK(two.robin->records()->find(squawk)->component_id == rib);
    REQUIRE(two.robin->conflicts().size() == 1);
    CHECK(two.robin->conflicts().front().kind == ConflictKind::Existence);
}

TEST_CASE("A change that breaks a rule at its turn is set aside whole, and can be tried again")
{
    TwoCopies two;
    two.part(two.robin, "Rib three", "R3");
    const auto spar = two.part(two.kim(), "Spar", "R3");
    two.note(two.kim(), "Primed");
    two.mergeBoth();
    CHECK_FALSE(two.robin->records()->find(spar));
    CHECK(two.wingOf(two.robin).note == "Primed");
    const auto conflicts = two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().kind == ConflictKind::SetAside);
    CHECK(conflicts.front().lost_by.label == "Part Spar");
    CHECK(conflicts.front().reason.find("R3") != std::string::npos);
    const auto refused = two.robin->decide(conflicts.front().id, ConflictDecision::Taken);
    REQUIRE_FALSE(refused);
    CHECK(english(refused.reason()).find("R3") != std::string::npos);
    two.later(two.robin);
    two.robin.change("Another code", [&](Edit &edit) {
        for (const auto &part : edit.records().components) {
            if (part.code == "R3")
                edit.update(part.id, [](Component &other) { other.code = "R3a"; });
        }
    });
    REQUIRE(two.robin->decide(conflicts.front().id, ConflictDecision::Taken));
    CHECK(two.robin->records()->find(spar)->code == "R3");
    two.mergeBoth();
    CHECK(two.kim()->records()->find(spar));
}

TEST_CASE("A change that was set aside and that its author took back is nothing to decide")
{
    TwoCopies two;
    two.part(two.robin, "Rib three", "R3");
    two.part(two.kim(), "Spar", "R3");
    REQUIRE(two.kim()->undo());
    two.mergeBoth();
    CHECK(two.robin->conflicts().empty());
    CHECK(two.robin->records()->components.size() == 2);
}

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

TEST_CASE("The other copy is only read")
{
    TwoCopies two;
    two.rename(two.kim(), "Left wing");
    const auto state = [&] {
        std::map<std::string, std::vector<std::uint8_t>> files;
        for (const auto &entry : std::filesystem::recursive_directory_iterator(two.kim().folder())) {
            if (entry.is_regular_file())
                files[entry.path().string()] = test::readBytes(entry.path());
        }
        return files;
    };
    const auto before = state();
    two.robin.merge(two.kim());
    CHECK(state() == before);
}
