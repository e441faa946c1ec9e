// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/SquawkFilter.h"

#include <catch2/catch.hpp>

namespace lastrivet::readiness {

namespace {

using Standing = SquawkFilter::Standing;

/// Four squawks: an open one on a rib, a fixed one of an inspection, a done one, one on papers.
struct Bench {
    Bench()
    {
        put(Component{.id = Id<Component>{1}, .code = "LW", .name = "Left wing"});
        put(Component{.id = Id<Component>{2}, .parent_id = Id<Component>{1}, .name = "Rib 3"});
        const auto day = Moment::parse("2026-03-01");
        put(Squawk{.id = Id<Squawk>{1},
                   .number = "1",
                   .component_id = Id<Component>{2},
                   .title = "Überdrehte Mutter",
                   .found_on = day});
        Squawk fixed{.id = Id<Squawk>{2},
                     .number = "2",
                     .component_id = Id<Component>{1},
                     .title = "Loose wire",
                     .severity = Severity::Airworthiness,
                     .found_on = day,
                     .inspection_id = Id<Inspection>{9},
                     .verify_by = SignerRole::Inspector};
        fixed.correction = "Clamped";
        fixed.fixed_on = Moment::parse("2026-03-05");
        put(fixed);
        Squawk done{.id = Id<Squawk>{3},
                    .number = "3",
                    .title = "Scratch",
                    .severity = Severity::Cosmetic,
                    .found_on = day};
        done.accepted_on = Moment::parse("2026-03-06");
        put(done);
        put(Squawk{
            .id = Id<Squawk>{4}, .number = "4", .title = "Log page missing", .found_on = day});
    }
    template <class Record> void put(const Record &record) { records.put(Record::type, &record); }
    std::vector<std::int64_t> of(const SquawkFilter &filter,
                                 std::string_view day = "2026-03-14") const
    {
        const Moment asOf = *Moment::parse(day);
        Answer answer{asOf, "ca"};
        answer.out_of_reach.push_back({{RecordType::Squawk, 1}, {Id<Closing>{71}}});
        std::vector<std::int64_t> ids;
        for (const auto &listed :
             filtered(squawkOrder(records, answer, asOf), filter, records, asOf))
            ids.push_back(listed.id.value());
        std::ranges::sort(ids);
        return ids;
    }

    Records records;
};

using Ids = std::vector<std::int64_t>;

} // namespace

TEST_CASE("Squawks are filtered by how far they are dealt with")
{
    const Bench bench;
    CHECK(bench.of({}) == Ids{1, 2, 4});
    CHECK(bench.of({.standing = Standing::ToFix}) == Ids{1, 4});
    CHECK(bench.of({.standing = Standing::ToVerify}) == Ids{2});
    CHECK(bench.of({.standing = Standing::Done}) == Ids{3});
    CHECK(bench.of({.standing = Standing::All}) == Ids{1, 2, 3, 4});
}

TEST_CASE("How far a squawk is dealt with is judged at the moment of the list")
{
    const Bench bench;
    CHECK(bench.of({.standing = Standing::ToFix}, "2026-03-04") == Ids{1, 2, 3, 4});
    CHECK(bench.of({.standing = Standing::ToVerify}, "2026-03-04").empty());
    CHECK(bench.of({.standing = Standing::ToVerify}, "2026-03-05") == Ids{2});
    CHECK(bench.of({.standing = Standing::Done}, "2026-03-05").empty());
    CHECK(bench.of({.standing = Standing::Done}, "2026-03-06") == Ids{3});
    CHECK(bench.of({.standing = Standing::All}, "2026-02-28").empty());
}

TEST_CASE("A part's squawks are its own and those of everything below it, but no paper's")
{
    const Bench bench;
    CHECK(bench.of({.part = Id<Component>{1}}) == Ids{1, 2});
    CHECK(bench.of({.part = Id<Component>{2}}) == Ids{1});
}

TEST_CASE("In a tree that is damaged into a ring the search for a part's squawks ends")
{
    Bench bench;
    bench.put(
        Component{.id = Id<Component>{1}, .parent_id = Id<Component>{2}, .name = "Left wing"});
    CHECK(bench.of({.part = Id<Component>{3}}).empty());
    CHECK(bench.of({.part = Id<Component>{1}}) == Ids{1, 2});
}

TEST_CASE("Squawks are filtered by severity, verifier, inspection and reach")
{
    const Bench bench;
    CHECK(bench.of({.severity = Severity::Airworthiness}) == Ids{2});
    CHECK(bench.of({.verifier = SignerRole::Inspector}) == Ids{2});
    CHECK(bench.of({.verifier = SignerRole::Builder}) == Ids{1, 4});
    CHECK(bench.of({.inspection = Id<Inspection>{9}}) == Ids{2});
    CHECK(bench.of({.reachable = Reachable::NoLonger}) == Ids{1});
}

TEST_CASE("All typed words have to occur, in whatever field and case")
{
    const Bench bench;
    CHECK(bench.of({.text = "CLAMPED wire"}) == Ids{2});
    CHECK(bench.of({.text = "rib mutter"}) == Ids{1});
    CHECK(bench.of({.text = "überdrehte"}) == Ids{1});
    CHECK(bench.of({.text = "rib wire"}).empty());
}

TEST_CASE("What was fixed and verified waits for nobody")
{
    Bench bench;
    Squawk verified = *bench.records.find(Id<Squawk>{2});
    verified.verified_on = Moment::parse("2026-03-07");
    bench.put(verified);
    CHECK(bench.of({.standing = Standing::ToVerify}, "2026-03-06") == Ids{2});
    CHECK(bench.of({.standing = Standing::ToVerify}, "2026-03-07").empty());
}

} // namespace lastrivet::readiness
