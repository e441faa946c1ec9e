// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/certificate/Papers.h"
#include "core/certificate/FlightTest.h"
#include "core/profiles/ProfileLibrary.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::certificate;
using test::on;

namespace {

const Profile &canada()
{
    static const auto profile = ProfileLibrary::standard().profile("ca");
    return profile;
}

CertificateDocument document(std::string_view key)
{
    CertificateDocument made;
    made.key = key;
    return made;
}

Paper find(const std::vector<Paper> &papers, std::string_view key)
{
    const auto found = std::find_if(papers.begin(), papers.end(),
                                    [&](const Paper &paper) { return paper.key == key; });
    REQUIRE(found != papers.end());
    return *found;
}

Flight flight(std::string_view day, std::int64_t minutes, std::string_view faults = {})
{
    Flight made;
    made.flown_on = on(day);
    made.minutes = Minutes{minutes};
    made.faults = faults;
    return made;
}

} // namespace

TEST_CASE("Documents stand in the country's order, each with how far it has come")
{
    test::ProjectBuilder project;
    auto letter = document("letter_of_intent");
    letter.asked_on = on("2026-01-02");
    letter.received_on = on("2026-02-01");
    letter.number = "A-17";
    const auto id = project.add(letter);
    auto marks = document("registration");
    marks.asked_on = on("2026-03-01");
    project.add(marks);
    auto own = document("club letter");
    own.received_on = on("2026-03-02");
    project.add(own);
    const auto all = papers(project.records, canada(), on("2026-04-01"));
    REQUIRE(all.size() == canada().documents.size() + 1);
    CHECK(all.front().key == "letter_of_intent");
    CHECK(all.front().state == PaperState::Here);
    CHECK(all.front().record == id);
    CHECK(all.front().hasNumber);
    CHECK_FALSE(all.front().hasScan);
    CHECK(find(all, "registration").state == PaperState::Asked);
    CHECK(find(all, "application").state == PaperState::Missing);
    CHECK_FALSE(find(all, "club letter").need);
    // As of an earlier day.
    const auto before = papers(project.records, canada(), on("2026-01-15"));
    CHECK(before.front().state == PaperState::Asked);
    CHECK(before.size() == canada().documents.size());
}

TEST_CASE("A document holds through its last day, and a newer one takes its place")
{
    test::ProjectBuilder project;
    auto first = document("letter_of_intent");
    first.received_on = on("2026-01-01");
    first.expires_on = on("2026-03-31");
    project.add(first);
    const auto stateOn = [&](std::string_view day) {
        return papers(project.records, canada(), on(day)).front().state;
    };
    CHECK(stateOn("2026-03-31") == PaperState::Here);
    CHECK(stateOn("2026-04-01") == PaperState::Expired);
    auto second = document("letter_of_intent");
    second.received_on = on("2026-04-10");
    const auto id = project.add(second);
    CHECK(stateOn("2026-04-09") == PaperState::Expired);
    CHECK(stateOn("2026-04-10") == PaperState::Here);
    project.withdraw(id);
    CHECK(stateOn("2026-04-10") == PaperState::Expired);
}

TEST_CASE("Trouble-free hours count from the last flight with a fault")
{
    test::ProjectBuilder project;
    CHECK(flightTest(project.records, on("2026-08-01")).flights == 0);
    project.add(flight("2026-06-01T09:00", 50));
    project.add(flight("2026-06-01T15:00", 30, "Oil temperature high"));
    project.add(flight("2026-06-02", 40));
    const auto last = project.add(flight("2026-06-03", 35));
    const auto flown = flightTest(project.records, on("2026-08-01"));
    CHECK(flown.flights == 4);
    CHECK(flown.landings == 4);
    CHECK(flown.flown == Minutes{155});
    CHECK(flown.faultless == Minutes{75});
    CHECK(flown.faultless_flights == 2);
    CHECK(flightTest(project.records, on("2026-06-02")).faultless == Minutes{40});
    project.withdraw(last);
    CHECK(flightTest(project.records, on("2026-08-01")).faultless == Minutes{40});
    const auto left = progress(flown, canada());
    REQUIRE_FALSE(left.empty());
    // 25 hours in which nothing but normal upkeep was needed.
    CHECK(left.front().needed == Minutes{25 * 60});
    CHECK(left.front().left == Minutes{25 * 60 - 75});
    CHECK_FALSE(left.front().isDone());
}
