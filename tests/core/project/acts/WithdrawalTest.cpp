// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/Withdrawal.h"

#include "core/project/acts/PhotoActs.h"
#include "core/project/acts/WorkActs.h"
#include "tests/support/ActBench.h"

namespace lastrivet::test {

TEST_CASE("Those who name a record, and those who name them, go with it or it stays")
{
    ActBench bench;
    Id<Step> step;
    Id<WorkSession> work;
    Id<Media> photo;
    bench.change([&](Edit &edit) {
        step = acts::addStep(edit, bench.tank, "Seal");
        work = edit.put(WorkSession{.began = edit.today(), .step_id = step});
        photo = edit.put(Media{.file = "photos/a.jpg"});
        acts::linkMedia(edit, photo, {RecordType::Component, bench.tank.value()});
        acts::linkMedia(edit, photo, {RecordType::Component, bench.tank.value()});
    });
    CHECK(bench.records()->find(photo)->links.size() == 1);
    const RecordRef tank{RecordType::Component, bench.tank.value()};
    const std::vector<RecordRef> expected{{RecordType::Step, step.value()},
                                          {RecordType::WorkSession, work.value()}};
    CHECK(acts::companions(*bench.records(), {tank}) == expected);
    CHECK(bench.isRefused([&](Edit &edit) { acts::withdraw(edit, {tank}, "double"); }));
    bench.change([&](Edit &edit) {
        auto all = acts::companions(edit.records(), {tank});
        all.push_back(tank);
        acts::withdraw(edit, all, "double");
    });
    CHECK_FALSE(bench.records()->findLive(bench.tank));
    CHECK_FALSE(bench.records()->findLive(work));
    CHECK(bench.records()->findLive(photo));
    CHECK(bench.records()->find(step)->withdrawn_why == "double");
}

TEST_CASE("Whatever names a photograph stays without it when that is withdrawn")
{
    ActBench bench;
    Id<Media> photo;
    Id<Media> other;
    Id<Deviation> deviation;
    Id<Expense> expense;
    Id<Tool> tool;
    bench.change([&](Edit &edit) {
        photo = edit.put(Media{.file = "photos/a.jpg"});
        other = edit.put(Media{.file = "photos/b.jpg"});
        Deviation thicker;
        thicker.number = nextNumber<Deviation>(edit.records());
        thicker.title = "A thicker skin";
        thicker.raised_on = edit.today();
        thicker.media_ids = {photo, other};
        deviation = edit.put(thicker);
        Expense rivets;
        rivets.what = "Rivets";
        rivets.spent_on = edit.today();
        rivets.currency = "CAD";
        rivets.media_id = photo;
        expense = edit.put(rivets);
        Tool wrench;
        wrench.name = "Torque wrench";
        wrench.calibrations = {{edit.today(), *edit.today().plusDays(365), photo}};
        tool = edit.put(wrench);
    });
    const RecordRef blurred{RecordType::Media, photo.value()};
    CHECK(acts::companions(*bench.records(), {blurred}).empty());
    CHECK(acts::namingFiles(*bench.records(), {blurred}).size() == 3);
    bench.change([&](Edit &edit) {
        acts::withdraw(edit, {blurred}, "blurred");
        acts::letGoOfFiles(edit, {blurred});
    });
    const auto records = bench.records();
    CHECK_FALSE(records->findLive(photo));
    REQUIRE(records->findLive(deviation));
    CHECK(records->find(deviation)->media_ids == std::vector{other});
    REQUIRE(records->findLive(expense));
    CHECK_FALSE(records->find(expense)->media_id);
    REQUIRE(records->findLive(tool));
    CHECK(records->find(tool)->calibrations.size() == 1);
    CHECK_FALSE(records->find(tool)->calibrations.front().certificate_id);
}

TEST_CASE("A step that others come after is withdrawn alone")
{
    ActBench bench;
    Id<Step> first;
    Id<Step> second;
    bench.change([&](Edit &edit) {
        first = acts::addStep(edit, bench.wing, "Drill");
        second = acts::addStep(edit, bench.wing, "Rivet");
        edit.update(second, [&](Step &step) { step.after = {first}; });
    });
    CHECK(acts::companions(*bench.records(), {{RecordType::Step, first.value()}}).empty());
    bench.change([&](Edit &edit) {
        acts::withdraw(edit, {{RecordType::Step, first.value()}}, "twice");
    });
    CHECK_FALSE(bench.records()->findLive(first));
    CHECK(bench.records()->findLive(second));
}

TEST_CASE("A photo confirmed for a log entry belongs to its part as well")
{
    ActBench bench;
    Id<Media> photo;
    Id<WorkSession> work;
    bench.change([&](Edit &edit) {
        work = edit.put(WorkSession{.began = edit.today(), .component_id = bench.tank});
        photo = edit.put(Media{.file = "photos/a.jpg"});
        acts::linkToSession(edit, photo, work);
        acts::setShown(edit, photo, Shows::Interior, true);
    });
    CHECK(bench.records()->find(photo)->links ==
          std::vector<Media::Link>{{RecordType::WorkSession, work.value()},
                                   {RecordType::Component, bench.tank.value()}});
    CHECK(bench.records()->find(photo)->shows.contains(Shows::Interior));
    bench.change([&](Edit &edit) {
        acts::unlinkMedia(edit, photo, {RecordType::WorkSession, work.value()});
    });
    CHECK(bench.records()->find(photo)->links.size() == 1);
}

} // namespace lastrivet::test
