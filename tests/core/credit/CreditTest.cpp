// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/Credit.h"
#include "core/answers/CreditJson.h"
#include "core/base/Tongue.h"
#include "core/credit/CreditSentences.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <sstream>

using namespace lastrivet;
using namespace lastrivet::credit;
using namespace lastrivet::test;

namespace {

Id<CreditTask> task(ProjectBuilder &project, std::int64_t kit, std::int64_t commercial,
                    std::int64_t assembly, std::int64_t fabrication)
{
    return project.add(CreditTask{.task = "Ribs",
                                  .not_applicable = kit + commercial + assembly + fabrication == 0,
                                  .kit_tenths = kit,
                                  .commercial_tenths = commercial,
                                  .assembly_tenths = assembly,
                                  .fabrication_tenths = fabrication});
}

} // namespace

TEST_CASE("The share is exact at one half and rounds down in print")
{
    ProjectBuilder project;
    task(project, 5, 0, 3, 2);
    auto sum = account(project.records, project.profile);
    CHECK(sum.shareText() == "50.00");
    CHECK_FALSE(sum.sharePasses());
    for (int i = 0; i < 2500; ++i)
        task(project, 5, 0, 5, 0);
    task(project, 4, 0, 6, 0);
    sum = account(project.records, project.profile);
    CHECK(sum.shareText() == "50.00");
    CHECK(sum.shareHundredths() == 5000);
    CHECK(sum.sharePasses());
    CHECK(sum.passes());
}

TEST_CASE("The share in a sentence has the sign for decimals of the sentence's language")
{
    ProjectBuilder project;
    task(project, 3, 0, 4, 3);
    task(project, 3, 0, 4, 3);
    task(project, 7, 0, 0, 3);
    const auto said = verdict(account(project.records, project.profile));
    REQUIRE(said.size() == 2);
    CHECK(english(said.front()) ==
          "The builder's share is 56.66 % of 3 tasks that apply: more than half.");
    const Tongue comma{[](std::string_view pattern) {
                           return pattern == "{0}.{1}" ? std::string("{0},{1}")
                                                       : std::string(pattern);
                       },
                       {}};
    CHECK(lastrivet::said(said.front(), comma).find("56,66 %") != std::string::npos);
}

TEST_CASE("Without a task that applies there is no share")
{
    ProjectBuilder project;
    project.withdraw(task(project, 0, 0, 10, 0));
    task(project, 0, 0, 0, 0);
    const auto sum = account(project.records, project.profile);
    CHECK(sum.rows == 1);
    CHECK(sum.applicable_rows == 0);
    CHECK_FALSE(sum.shareHundredths());
    CHECK_FALSE(sum.shareText());
    CHECK_FALSE(sum.passes());
}

TEST_CASE("Ticks go to whoever did more, halves to both, and decide where the profile says so")
{
    ProjectBuilder project;
    project.profile.credit_basis = CreditBasis::Ticks;
    task(project, 4, 0, 6, 0);
    task(project, 5, 0, 0, 5);
    task(project, 10, 0, 0, 0);
    auto sum = account(project.records, project.profile);
    REQUIRE(sum.two_columns);
    CHECK(sum.two_columns->builder_half_ticks == 3);
    CHECK(sum.two_columns->maker_half_ticks == 3);
    CHECK_FALSE(sum.passes());
    task(project, 0, 4, 3, 3);
    sum = account(project.records, project.profile);
    CHECK(sum.passes());
    CHECK_FALSE(sum.sharePasses());
    project.profile.credit_basis = CreditBasis::Tenths;
    CHECK_FALSE(account(project.records, project.profile).passes());
}

TEST_CASE(
    "A task of the builder's needs a picture of its own, or of the builder at work on its parts")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto id = task(project, 4, 0, 6, 0);
    project.change(id, [&](CreditTask &t) { t.component_ids = {wing}; });
    task(project, 10, 0, 0, 0);
    const auto gaps = [&] { return account(project.records, project.profile).evidence_gaps; };
    CHECK(gaps() == std::vector{id});

    const auto photo = project.photo("2026-01-02", {{RecordType::Component, rib.value()}});
    CHECK(gaps() == std::vector{id});
    SECTION("the builder is in a picture of a part below")
    {
        project.change(photo, [](Media &m) { m.shows = {Shows::BuilderAtWork}; });
        CHECK(gaps().empty());
        project.withdraw(photo);
        CHECK(gaps() == std::vector{id});
    }
    SECTION("the task names any picture")
    {
        project.change(id, [&](CreditTask &t) { t.media_ids = {photo}; });
        CHECK(gaps().empty());
        project.change(photo, [](Media &m) { m.kind = MediaKind::Document; });
        CHECK(gaps() == std::vector{id});
        project.change(photo, [](Media &m) { m.kind = MediaKind::Video; });
        CHECK(gaps().empty());
        project.withdraw(photo);
        CHECK(gaps() == std::vector{id});
    }
    SECTION("the part below that the picture shows was taken back")
    {
        project.change(photo, [](Media &m) { m.shows = {Shows::BuilderAtWork}; });
        project.withdraw(rib);
        CHECK(gaps() == std::vector{id});
    }
}

TEST_CASE("The account as JSON")
{
    ProjectBuilder project;
    project.profile.id = "ca";
    project.profile.credit_basis = CreditBasis::Ticks;
    const auto id = task(project, 4, 1, 3, 2);
    std::ostringstream out;
    answers::writeJson(account(project.records, project.profile), out);
    CHECK(out.str() == R"({"profile":"ca","rows":1,"applicable_rows":1,"kit_tenths":4,)"
                       R"("commercial_tenths":1,"assembly_tenths":3,"fabrication_tenths":2,)"
                       R"("share_hundredths":5000,"share_text":"50.00","share_passes":false,)"
                       R"("basis":"ticks","passes":false,"two_columns":{"builder_half_ticks":1,)"
                       R"("maker_half_ticks":1,"passes":false},"evidence_gaps":[)" +
                           std::to_string(id.value()) + "]}\n");
}

TEST_CASE("Without a row that applies the share is null in JSON, and so are columns nobody counts")
{
    ProjectBuilder project;
    project.profile.credit_basis = CreditBasis::Tenths;
    task(project, 0, 0, 0, 0);
    std::ostringstream out;
    answers::writeJson(account(project.records, project.profile), out);
    CHECK(out.str() == R"({"profile":"plain","rows":1,"applicable_rows":0,"kit_tenths":0,)"
                       R"("commercial_tenths":0,"assembly_tenths":0,"fabrication_tenths":0,)"
                       R"("share_hundredths":null,"share_text":null,"share_passes":false,)"
                       R"("basis":"tenths","passes":false,"two_columns":null,)"
                       R"("evidence_gaps":[]})"
                       "\n");
}
