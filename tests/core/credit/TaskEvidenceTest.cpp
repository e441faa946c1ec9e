// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/TaskEvidence.h"

#include "core/credit/Credit.h"
#include "core/credit/SuggestedTasks.h"
#include "tests/support/ProjectBuilder.h"

#include <catch2/catch.hpp>

#include <set>

using namespace lastrivet;
using namespace lastrivet::credit;
using namespace lastrivet::test;

namespace {

Media photo(std::string_view day, WordSet<Shows> shows, Id<Component> part)
{
    Media media;
    media.taken_on = on(day);
    media.shows = shows;
    if (part)
        media.links.push_back({RecordType::Component, part.value()});
    return media;
}

} // namespace

TEST_CASE(
    "A task is shown by its own pictures, by the builder at work below its parts, and by the log")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    const auto tail = project.part("Tail");
    const auto late = project.add(photo("2026-03-02", {Shows::BuilderAtWork}, rib));
    const auto named = project.add(photo("2026-02-01", {Shows::Interior}, {}));
    project.add(photo("2026-02-02", {Shows::Interior}, rib));
    project.add(photo("2026-02-03", {Shows::BuilderAtWork}, tail));
    WorkSession session;
    session.component_id = rib;
    session.began = on("2026-03-02");
    session.minutes = Minutes{90};
    const auto worked = project.add(session);
    session.component_id = tail;
    project.add(session);
    CreditTask task{.task = "Ribs", .fabrication_tenths = 10};
    task.component_ids = {wing};
    task.media_ids = {named};
    const auto found = EvidenceFinder(project.records).of(task);
    CHECK(found.pictures == std::vector{named, late});
    CHECK(found.sessions == std::vector{worked});
    CHECK(found.minutes == Minutes{90});
}

TEST_CASE("Evidence is told once, and neither a document nor a withdrawn log entry is any")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    auto both = photo("2026-03-02", {Shows::BuilderAtWork}, rib);
    both.links.push_back({RecordType::Component, wing.value()});
    const auto shown = project.add(both);
    auto paper = photo("2026-03-01", {}, {});
    paper.kind = MediaKind::Document;
    const auto drawing = project.add(paper);
    const auto worked = project.session(rib, "2026-03-02", 90);
    project.withdraw(project.session(rib, "2026-03-03", 500));
    CreditTask task{.task = "Ribs", .fabrication_tenths = 10};
    task.component_ids = {wing};
    task.media_ids = {shown, drawing};
    const auto found = EvidenceFinder(project.records).of(task);
    CHECK(found.pictures == std::vector{shown});
    CHECK(found.sessions == std::vector{worked});
    CHECK(found.minutes == Minutes{90});
}

TEST_CASE("A claimed task is a gap of the account exactly when it has no picture")
{
    ProjectBuilder project;
    const auto wing = project.part("Wing");
    const auto rib = project.part("Rib", wing);
    CreditTask task{.task = "Ribs", .fabrication_tenths = 10};
    task.component_ids = {wing};
    const auto id = project.add(task);
    const auto isGap = [&] {
        return !account(project.records, project.profile).evidence_gaps.empty();
    };
    const auto hasNone = [&] {
        return EvidenceFinder(project.records).of(*project.records.find(id)).pictures.empty();
    };
    CHECK(isGap());
    CHECK(hasNone());
    const auto shown = project.add(photo("2026-03-02", {Shows::BuilderAtWork}, rib));
    CHECK_FALSE(isGap());
    CHECK_FALSE(hasNone());
    project.withdraw(shown);
    CHECK(isGap());
    CHECK(hasNone());
}

TEST_CASE("Suggested tasks stand once in their section, for every class of aircraft")
{
    const auto all = suggestedTasks();
    REQUIRE(all.size() >= 4);
    for (const auto &kind : all) {
        std::set<std::pair<std::string, std::string>> seen;
        for (const auto &section : kind.sections) {
            for (const auto &task : section.tasks)
                CHECK(seen.emplace(section.title, task).second);
        }
        CHECK(seen.size() >= 10);
        // No authority's form was at hand: nobody is to take them for one.
        CHECK(kind.mark != Mark::Read);
    }
}
