// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/SquawkOrder.h"

#include <catch2/catch.hpp>

namespace lastrivet::readiness {

namespace {

void add(Records &records, std::int64_t id, Severity severity, std::string_view found,
         std::string_view verified = {})
{
    Squawk squawk{.id = Id<Squawk>{id}, .number = std::to_string(id), .title = "Rivet"};
    squawk.severity = severity;
    squawk.found_on = Moment::parse(found);
    squawk.verified_on = Moment::parse(verified);
    records.put(RecordType::Squawk, &squawk);
}

std::vector<std::int64_t> ids(const std::vector<ListedSquawk> &list)
{
    std::vector<std::int64_t> found;
    for (const ListedSquawk &squawk : list)
        found.push_back(squawk.id.value());
    return found;
}

} // namespace

TEST_CASE("What is soon out of reach comes first, then what already is, then severity and age")
{
    Records records;
    add(records, 1, Severity::Airworthiness, "2026-01-05");
    add(records, 2, Severity::Workmanship, "2026-01-02");
    add(records, 3, Severity::Workmanship, "2026-01-01");
    add(records, 4, Severity::Cosmetic, "2026-01-01");
    add(records, 5, Severity::Cosmetic, "2026-01-01");
    add(records, 6, Severity::Airworthiness, "2026-01-01", "2026-01-09");
    Answer answer{*Moment::parse("2026-03-14"), "ca"};
    answer.last_chance.push_back({Id<Closing>{70}, {{RecordType::Squawk, 5}}});
    answer.out_of_reach.push_back({{RecordType::Squawk, 4}, {Id<Closing>{71}, Id<Closing>{72}}});
    const auto list = squawkOrder(records, answer, answer.as_of);
    CHECK(ids(list) == std::vector<std::int64_t>{5, 4, 1, 3, 2, 6});
    CHECK(list[0].reachable == Reachable::NotForLong);
    CHECK(list[0].closings == IdSet<Closing>{Id<Closing>{70}});
    CHECK(list[1].closings.size() == 2);
    CHECK(list[5].reachable == Reachable::Done);
}

TEST_CASE("A squawk that keeps a closing open is urgent only when that closing may be next")
{
    Records records;
    add(records, 1, Severity::Workmanship, "2026-01-05");
    Answer answer{*Moment::parse("2026-03-14"), "ca"};
    ClosingAnswer closing;
    closing.id = Id<Closing>{70};
    closing.blockers.push_back(
        {Rule::OpenSquawk, Weight::Must, {RecordType::Squawk, 1}, SignerRole::Inspector, {}});
    closing.state = State::ReadyToInspect;
    answer.closings.push_back(closing);
    CHECK(squawkOrder(records, answer, answer.as_of).front().reachable == Reachable::NotForLong);
    answer.closings.front().state = State::Hold;
    CHECK(squawkOrder(records, answer, answer.as_of).front().reachable == Reachable::Yes);
}

TEST_CASE("The list is that of its moment: found later is not on it, verified later is not done")
{
    Records records;
    add(records, 1, Severity::Workmanship, "2026-03-10", "2026-03-12");
    add(records, 2, Severity::Workmanship, "2026-03-11");
    const Answer answer{*Moment::parse("2026-03-14"), "ca"};
    const auto on = [&](std::string_view day) {
        return squawkOrder(records, answer, *Moment::parse(day));
    };
    CHECK(on("2026-03-09").empty());
    REQUIRE(ids(on("2026-03-10")) == std::vector<std::int64_t>{1});
    CHECK(on("2026-03-10").front().reachable == Reachable::Yes);
    CHECK(ids(on("2026-03-12")) == std::vector<std::int64_t>{2, 1});
    CHECK(on("2026-03-12").back().reachable == Reachable::Done);
}

TEST_CASE("A cosmetic squawk is urgent while nothing stands against the closing over it")
{
    Records records;
    add(records, 1, Severity::Cosmetic, "2026-01-05");
    Answer answer{*Moment::parse("2026-03-14"), "ca"};
    ClosingAnswer closing;
    closing.id = Id<Closing>{70};
    closing.blockers.push_back(
        {Rule::OpenSquawk, Weight::Should, {RecordType::Squawk, 1}, std::nullopt, {}});
    closing.state = State::Clear;
    answer.closings.push_back(closing);
    CHECK(squawkOrder(records, answer, answer.as_of).front().reachable == Reachable::NotForLong);
}

TEST_CASE("A withdrawn squawk is on no list")
{
    Records records;
    add(records, 1, Severity::Workmanship, "2026-01-05");
    add(records, 2, Severity::Workmanship, "2026-01-05");
    Squawk squawk = *records.find(Id<Squawk>{1});
    squawk.withdrawn_on = Moment::parse("2026-01-06");
    records.put(RecordType::Squawk, &squawk);
    const Answer answer{*Moment::parse("2026-03-14"), "ca"};
    CHECK(ids(squawkOrder(records, answer, answer.as_of)) == std::vector<std::int64_t>{2});
}

} // namespace lastrivet::readiness
