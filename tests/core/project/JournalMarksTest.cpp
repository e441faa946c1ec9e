// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/JournalMarks.h"

#include "tests/support/TestProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace std::chrono_literals;

namespace {

constexpr std::int64_t month = 30;

std::vector<LateDate> lateIn(const Project &project)
{
    const auto row = project.journal().back();
    return lateDates(row, project.changesOf(row.seq), project.records()->project.time_zone, month);
}

Moment on(std::string_view text)
{
    return *Moment::parse(text);
}

WorkSession sessionOn(std::string_view day)
{
    WorkSession session;
    session.began = on(day);
    return session;
}

} // namespace

TEST_CASE("A day more than a month before it was written down is late, a day less is not")
{
    test::TestProject project; // It is 14 March.
    Id<WorkSession> id;
    project.change("Log", [&](Edit &edit) { id = edit.put(sessionOn("2026-02-12T22:00")); });
    CHECK(lateIn(*project).empty());
    project.change("Log", [&](Edit &edit) { id = edit.put(sessionOn("2026-02-11T22:00")); });
    CHECK(lateIn(*project) ==
          std::vector<LateDate>{
              {{RecordType::WorkSession, id.value()}, "began", on("2026-02-11T22:00")}});
}

TEST_CASE("Dates in the rows of lists count, those that were there before do not again")
{
    test::TestProject project;
    const auto wing = project.part("Wing");
    Closing closing;
    closing.component_id = wing;
    closing.title = "Skin";
    closing.encloses = {wing};
    closing.events = {{.closed_on = on("2026-01-05")}};
    Id<Closing> id;
    project.change("Closed", [&](Edit &edit) { id = edit.put(closing); });
    REQUIRE(lateIn(*project).size() == 1);
    CHECK(lateIn(*project)[0].field == "events.closed_on");
    project.change("Why", [&](Edit &edit) {
        edit.update(id, [](Closing &closed) { closed.events[0].reason = "glued"; });
    });
    CHECK(lateIn(*project).empty());
}

TEST_CASE("What was planned, what a picture says, and what was imported is not late")
{
    test::TestProject project;
    project.change("Photo", [](Edit &edit) {
        Media media;
        media.file = "photos/wing.jpg";
        media.taken_on = on("2020-01-01");
        edit.put(media);
    });
    CHECK(lateIn(*project).empty());
    project.change(
        "Import", [](Edit &edit) { edit.put(sessionOn("2020-01-01")); }, ChangeKind::Import);
    CHECK(lateIn(*project).empty());
    REQUIRE(project->undo());
    REQUIRE(project->redo());
    CHECK(lateIn(*project).empty());
}

TEST_CASE("A day that a reversal brings back was written down before, and is not late again")
{
    test::TestProject project;
    Id<WorkSession> id;
    project.change("Log", [&](Edit &edit) { id = edit.put(sessionOn("2026-01-05")); });
    CHECK(lateIn(*project).size() == 1);
    project.change("Moved", [&](Edit &edit) {
        edit.update(id, [](WorkSession &session) { session.began = on("2026-03-13"); });
    });
    const auto moved = project->journal().back();
    project.part("Tail");
    REQUIRE(project->reverse(moved.seq, "“Moved” taken back"));
    CHECK(project->records()->find(id)->began == on("2026-01-05"));
    CHECK(lateIn(*project).empty());
    CHECK(project->journal().back().undoes == moved.change_id);
    CHECK(project->undoLabel() == "“Moved” taken back");
}

TEST_CASE("Rows written while the clock was set back are told from those with a time of their own")
{
    test::TestProject project;
    const auto pushed = [&] {
        const auto rows = project->journal();
        std::vector<std::string> labels;
        for (std::size_t i = 1; i < rows.size(); ++i) {
            if (isPushedAhead(rows[i], rows[i - 1]))
                labels.push_back(rows[i].label);
        }
        return labels;
    };
    project.clock().advance(1h);
    project.part("Wing");
    CHECK(pushed().empty());
    project.clock().advance(-48h);
    project.part("Tail");
    project.clock().advance(1min);
    project.part("Fin");
    project.clock().advance(49h);
    project.part("Rudder");
    CHECK(pushed() == std::vector<std::string>{"Part Tail", "Part Fin"});
    const auto rows = project->journal();
    CHECK(std::ranges::is_sorted(rows, std::less<>{}, &JournalEntry::stamp));
}
