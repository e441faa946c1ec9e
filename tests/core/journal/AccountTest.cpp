// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/journal/Account.h"

#include "core/journal/RecordHistory.h"
#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::journal;

namespace {

std::vector<RecordAccount> lastAccount(const Project &project)
{
    return accountOf(*project.records(), project.changesOf(project.journal().back().seq));
}

const FieldAccount &fieldOf(const RecordAccount &account, std::string_view name)
{
    const auto found = std::ranges::find_if(account.fields, [&](const FieldAccount &each) {
        return each.field && each.field->name == name;
    });
    REQUIRE(found != account.fields.end());
    return *found;
}

template <class Kind> Kind only(const Value &value)
{
    REQUIRE(value.parts.size() == 1);
    REQUIRE(std::holds_alternative<Kind>(value.parts.front().content));
    return std::get<Kind>(value.parts.front().content);
}

/// A wing with a rib, and hours on the rib.
struct Wing {
    test::TestProject project;
    Id<Person> builder = project.person("Robin");
    Id<Component> wing = project.part("Wing");
    Id<Component> rib;
    Id<WorkSession> entry;

    Wing()
    {
        project.change("Rib", [&](Edit &edit) {
            Component part;
            part.name = "Rib";
            part.parent_id = wing;
            rib = edit.put(part);
        });
        project.change("Hours", [&](Edit &edit) {
            WorkSession work;
            work.component_id = rib;
            work.began = edit.today();
            work.minutes = Minutes{95};
            work.note = "Dimpled";
            work.workers = {{.person_id = builder, .minutes = Minutes{95}}};
            entry = edit.put(work);
        });
    }
};

} // namespace

TEST_CASE("Dates, hours, words and names of records come out of the journal as what they are")
{
    Wing wing;
    const auto account = lastAccount(*wing.project);
    REQUIRE(account.size() == 1);
    CHECK(account[0].record == RecordRef{RecordType::WorkSession, wing.entry.value()});
    CHECK(account[0].kind == RowChange::Insert);
    CHECK(account[0].is_there);
    CHECK(only<Moment>(fieldOf(account[0], "began").to) == wing.project->today());
    CHECK(only<Minutes>(fieldOf(account[0], "minutes").to) == Minutes{95});
    CHECK(only<std::string>(fieldOf(account[0], "note").to) == "Dimpled");
    CHECK(english(only<Message>(fieldOf(account[0], "component_id").to)).find("Rib") !=
          std::string::npos);
    CHECK_FALSE(only<VocabularyWord>(fieldOf(account[0], "kind").to).word.empty());
    const auto &workers = fieldOf(account[0], "workers");
    REQUIRE(workers.added.size() == 1);
    CHECK(workers.from.isNothing());
    const auto &parts = workers.added.front().parts;
    CHECK(std::ranges::any_of(parts, [](const Value::Part &part) {
        const auto *name = std::get_if<Message>(&part.content);
        return name && english(*name).find("Robin") != std::string::npos;
    }));
    CHECK(std::ranges::any_of(
        parts, [](const Value::Part &part) { return part.content == Content{Minutes{95}}; }));
}

TEST_CASE("A change tells what was there before, and a record that was taken back is not there")
{
    Wing wing;
    wing.project.change("Renamed", [&](Edit &edit) {
        edit.update(wing.rib, [](Component &part) { part.name = "Rib 3"; });
    });
    const auto renamed = lastAccount(*wing.project);
    REQUIRE(renamed.size() == 1);
    CHECK(only<std::string>(fieldOf(renamed[0], "name").from) == "Rib");
    CHECK(only<std::string>(fieldOf(renamed[0], "name").to) == "Rib 3");
    REQUIRE(wing.project->undo());
    REQUIRE(wing.project->undo());
    const auto takenBack = lastAccount(*wing.project);
    CHECK(takenBack[0].kind == RowChange::Delete);
    CHECK_FALSE(takenBack[0].is_there);
}

TEST_CASE("A record that was taken back is called by what it was written down with")
{
    Wing wing;
    const auto hours = wing.project->journal().back().seq;
    const auto nameIn = [&](std::int64_t seq) {
        const auto account = accountOf(*wing.project->records(), wing.project->changesOf(seq));
        REQUIRE(account.size() == 1);
        return english(account[0].name);
    };
    const std::string day = wing.project->today().text();
    CHECK(nameIn(hours) == "log entry of " + day);
    CHECK(nameIn(hours - 1) == "part “Rib”");
    REQUIRE(wing.project->undo());
    REQUIRE(wing.project->undo());
    const auto newest = wing.project->journal().back().seq;
    CHECK(nameIn(hours) == "log entry of " + day);
    CHECK(nameIn(hours - 1) == "part “Rib”");
    CHECK(nameIn(newest - 1) == "log entry of " + day);
    CHECK(nameIn(newest) == "part “Rib”");
    wing.project.change("Here", [](Edit &edit) {
        CertificateDocument paper;
        paper.key = "bill_of_sale";
        edit.put(paper);
    });
    REQUIRE(wing.project->undo());
    CHECK(nameIn(wing.project->journal().back().seq) == "certificate document “Bill of sale”");
}

TEST_CASE("An amount is in the currency that its record had before the change and after it")
{
    test::TestProject project;
    Id<Expense> rivets;
    project.change("Rivets", [&](Edit &edit) {
        rivets = edit.put(
            Expense{.spent_on = edit.today(), .what = "Rivets", .amount = 1500, .currency = "JPY"});
    });
    CHECK(only<Money>(fieldOf(lastAccount(*project)[0], "amount").to) == Money{1500, "JPY"});
    project.change("Cheaper", [&](Edit &edit) {
        edit.update(rivets, [](Expense &expense) { expense.amount = 1200; });
    });
    CHECK(only<Money>(fieldOf(lastAccount(*project)[0], "amount").from) == Money{1500, "JPY"});
    CHECK(only<Money>(fieldOf(lastAccount(*project)[0], "amount").to) == Money{1200, "JPY"});
    project.change("In dollars", [&](Edit &edit) {
        edit.update(rivets, [](Expense &expense) {
            expense.amount = 899;
            expense.currency = "USD";
        });
    });
    CHECK(only<Money>(fieldOf(lastAccount(*project)[0], "amount").from) == Money{1200, "JPY"});
    CHECK(only<Money>(fieldOf(lastAccount(*project)[0], "amount").to) == Money{899, "USD"});
}

TEST_CASE("What is no value of its field is told as it stands, and null is nothing")
{
    const Records records;
    const Field *began = describe(RecordType::WorkSession).find("began");
    CHECK(only<std::string>(valueOf(records, began, "\"some day\"")) == "some day");
    CHECK(only<std::string>(valueOf(records, began, "{broken")) == "{broken");
    CHECK(valueOf(records, began, "null").isNothing());
    CHECK(valueOf(records, began, std::nullopt).isNothing());
    CHECK(only<std::int64_t>(valueOf(records, nullptr, "7")) == 7);
}

TEST_CASE("A record's history is the rows that touched it, and no others")
{
    Wing wing;
    const auto rows = [&](std::set<RecordRef> records) {
        return rowsTouching(wing.project.folder(), records);
    };
    const RecordRef rib{RecordType::Component, wing.rib.value()};
    const RecordRef entry{RecordType::WorkSession, wing.entry.value()};
    const auto last = wing.project->journal().back().seq;
    CHECK(rows({rib}) == std::vector<std::int64_t>{last - 1});
    CHECK(rows({entry}) == std::vector<std::int64_t>{last});
    // The id of one type is another record in another type.
    CHECK(rows({{RecordType::Squawk, wing.rib.value()}}).empty());
    wing.project.change("Renamed", [&](Edit &edit) {
        edit.update(wing.rib, [](Component &part) { part.name = "Rib 3"; });
    });
    wing.project->notePrinted("Packet");
    REQUIRE(wing.project->undo().reason().message.pattern.size() > 0);
    CHECK(rows({rib}) == std::vector<std::int64_t>{last - 1, last + 1});
    CHECK(rows({rib, entry}) == std::vector<std::int64_t>{last - 1, last, last + 1});
    CHECK(rows({}).empty());
}

TEST_CASE("A change of a set or a list belongs to the record's history")
{
    Wing wing;
    wing.project.change("Another worker", [&](Edit &edit) {
        edit.update(wing.entry, [](WorkSession &work) { work.workers.clear(); });
    });
    const auto last = wing.project->journal().back().seq;
    CHECK(rowsTouching(wing.project.folder(), {{RecordType::WorkSession, wing.entry.value()}}) ==
          std::vector<std::int64_t>{last - 1, last});
}

TEST_CASE("What belongs to a part is what is inside it and what is recorded on that")
{
    Wing wing;
    const auto all = belongingTo(*wing.project->records(), wing.wing);
    CHECK(all == std::set<RecordRef>{{RecordType::Component, wing.wing.value()},
                                     {RecordType::Component, wing.rib.value()},
                                     {RecordType::WorkSession, wing.entry.value()}});
    const auto other = wing.project.part("Tail");
    CHECK(belongingTo(*wing.project->records(), other) ==
          std::set<RecordRef>{{RecordType::Component, other.value()}});
}

TEST_CASE("What belongs to a closing are its hold points, signatures and lines to check")
{
    Wing wing;
    Id<Closing> skin;
    Id<HoldPoint> look;
    Id<SignOff> signature;
    wing.project.change("Closing", [&](Edit &edit) {
        Closing closing;
        closing.component_id = wing.wing;
        closing.title = "Upper skin";
        closing.encloses = {wing.rib};
        skin = edit.put(closing);
        closing.title = "Another skin";
        edit.put(closing);
        HoldPoint point;
        point.closing_id = skin;
        point.kind = HoldPointKind::OwnCheck;
        point.signer_role = SignerRole::Builder;
        point.planned_on = edit.today();
        look = edit.put(point);
        SignOff signed_by;
        signed_by.hold_point_id = look;
        signed_by.person_id = wing.builder;
        signed_by.signed_on = edit.today();
        signature = edit.put(signed_by);
    });
    CHECK(belongingTo(*wing.project->records(), skin) ==
          std::set<RecordRef>{{RecordType::Closing, skin.value()},
                              {RecordType::HoldPoint, look.value()},
                              {RecordType::SignOff, signature.value()}});
}
