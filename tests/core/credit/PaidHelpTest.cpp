// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/PaidHelp.h"

#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::credit;
using namespace lastrivet::test;

namespace {

Id<CreditTask> task(ProjectBuilder &project, const Tenths &tenths)
{
    CreditTask made{.task = "Ribs"};
    setTenths(made, tenths);
    return project.add(made);
}

} // namespace

TEST_CASE("Paid help takes tenths from the builder, and the whole account says what becomes of it")
{
    // Our own check set: eight rows with 3.4, 0.5, 2.3, 1.8 pass with 51.25 %; 0.2 of fabrication
    // paid for leave 48.75 %, which fails.
    ProjectBuilder project;
    task(project, {10, 0, 0, 0});
    task(project, {10, 0, 0, 0});
    task(project, {10, 0, 0, 0});
    task(project, {4, 5, 1, 0});
    task(project, {0, 0, 10, 0});
    task(project, {0, 0, 10, 0});
    const auto last = task(project, {0, 0, 2, 8});
    task(project, {0, 0, 0, 10});
    const auto now = account(project.records, project.profile);
    CHECK(now.shareText() == "51.25");
    CHECK(now.sharePasses());
    const auto then = ifPaid(now, *project.records.find(last), {0, 2});
    CHECK(then.shareText() == "48.75");
    CHECK_FALSE(then.sharePasses());
    CHECK(then.commercial_tenths == now.commercial_tenths + 2);
}

TEST_CASE("The account with paid help is that of the records with the help in them, form by form")
{
    ProjectBuilder project;
    // Ticks go from the builder to both, and from both to the maker.
    const auto whole = task(project, {0, 0, 6, 4});
    const auto tied = task(project, {5, 0, 2, 3});
    const auto none = project.add(CreditTask{.task = "Floats", .not_applicable = true});
    for (const auto basis : {CreditBasis::Tenths, CreditBasis::Ticks}) {
        project.profile.credit_basis = basis;
        for (const auto id : {whole, tied, none}) {
            const CreditTask asked = *project.records.find(id);
            const auto now = account(project.records, project.profile);
            for (const PaidHelp &help :
                 {PaidHelp{0, 0}, PaidHelp{5, 0}, PaidHelp{2, 3}, PaidHelp{6, 4}, PaidHelp{9, 9}}) {
                ProjectBuilder other = project;
                other.change(id, [&](CreditTask &made) { setTenths(made, withHelp(made, help)); });
                CHECK(ifPaid(now, asked, help) == account(other.records, other.profile));
            }
        }
    }
}

TEST_CASE("Nobody can be paid for more than the builder has in a column")
{
    const CreditTask task{
        .task = "Ribs", .kit_tenths = 5, .assembly_tenths = 3, .fabrication_tenths = 2};
    CHECK(withHelp(task, {9, 1}) == Tenths{5, 4, 0, 1});
    CHECK(withHelp(task, {-4, 0}) == Tenths{5, 0, 3, 2});
}

TEST_CASE("What can still be paid for is the last tenth before one half, whatever the sums are")
{
    for (std::int64_t rows = 1; rows <= 7; ++rows) {
        for (std::int64_t builder = 0; builder <= 10 * rows; ++builder) {
            Account sum;
            sum.kit_tenths = 10 * rows - builder;
            sum.fabrication_tenths = builder;
            const auto moved = [&](std::int64_t tenths) {
                Account other = sum;
                other.fabrication_tenths -= tenths;
                other.commercial_tenths += tenths;
                return other;
            };
            const auto spare = tenthsToSpare(sum);
            CHECK(spare.has_value() == sum.sharePasses());
            if (!spare)
                continue;
            CHECK(moved(*spare).sharePasses());
            CHECK_FALSE(moved(*spare + 1).sharePasses());
        }
    }
}

TEST_CASE("Tenths that do not add up to ten are refused in one sentence")
{
    CHECK(english(*whyNot({3, 0, 4, 2})) ==
          "The four columns add up to 9; the tenths of a task add up to 10.");
    CHECK(english(*whyNot({11, 0, -1, 0})) == "A column holds from 0 to 10 tenths.");
    CHECK(english(*whyNot({11, 0, 0, 0})) == "A column holds from 0 to 10 tenths.");
    CHECK_FALSE(whyNot({5, 3, 0, 2}));
}
