// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/TwoCopies.h"

#include <catch2/catch.hpp>

#include <cstdint>
#include <initializer_list>
#include <memory>
#include <string>
#include <vector>

using namespace lastrivet;
using test::ProjectCopy;
using test::TwoCopies;

namespace {

using Days = std::vector<std::string>;

Tool::Calibration calibration(const std::string &day)
{
    return {Moment::parse(day), Moment::parse(day)->plusDays(365), {}};
}

/// Two copies of a project with a wrench, calibrated on these days.
struct WithWrench {
    TwoCopies two;
    Id<Tool> wrench;
    std::unique_ptr<ProjectCopy> sascha;

    explicit WithWrench(const Days &days)
    {
        two.later(two.robin);
        two.robin.change("Wrench", [&](Edit &edit) {
            Tool tool;
            tool.name = "Torque wrench";
            for (const auto &day : days)
                tool.calibrations.push_back(calibration(day));
            wrench = edit.put(tool);
        });
        sascha = std::make_unique<ProjectCopy>(two.robin, "Sascha");
    }
    template <class Body> void change(ProjectCopy &copy, const Body &body)
    {
        two.later(copy);
        copy.change("Calibrations", [&](Edit &edit) {
            edit.update(wrench, [&](Tool &tool) { body(tool.calibrations); });
        });
    }
    /// Merges both ways, which must come to the same.
    Days merged()
    {
        ProjectCopy other(*sascha, "Sascha");
        other.merge(two.robin);
        two.robin.merge(*sascha);
        REQUIRE(*other->records() == *two.robin->records());
        Days days;
        for (const auto &each : two.robin->records()->find(wrench)->calibrations)
            days.push_back(each.calibrated_on->text());
        return days;
    }
};

using Calibrations = std::vector<Tool::Calibration>;

} // namespace

TEST_CASE("Of lines that two copies added to a list both are there, one that is the same once")
{
    WithWrench one({"2024-01-10"});
    const bool isSame = GENERATE(false, true);
    one.change(one.two.robin,
               [](Calibrations &list) { list.push_back(calibration("2025-01-10")); });
    one.change(*one.sascha, [&](Calibrations &list) {
        list.push_back(calibration(isSame ? "2025-01-10" : "2025-06-10"));
    });
    CHECK(one.merged() == (isSame ? Days{"2024-01-10", "2025-01-10"}
                                  : Days{"2024-01-10", "2025-01-10", "2025-06-10"}));
    CHECK(one.two.robin->conflicts().empty());
}

TEST_CASE("A line that says what another line says is a second one")
{
    WithWrench one({"2024-01-10"});
    one.change(one.two.robin,
               [](Calibrations &list) { list.push_back(calibration("2025-01-10")); });
    one.change(*one.sascha, [](Calibrations &list) { list.push_back(calibration("2024-01-10")); });
    CHECK(one.merged() == Days{"2024-01-10", "2025-01-10", "2024-01-10"});
}

TEST_CASE("Two copies that take different lines out of a list leave the others")
{
    WithWrench one({"2023-01-10", "2024-01-10", "2025-01-10"});
    const bool isLast = GENERATE(false, true);
    one.change(one.two.robin, [](Calibrations &list) { list.erase(list.begin()); });
    one.change(*one.sascha,
               [&](Calibrations &list) { list.erase(list.begin() + (isLast ? 2 : 1)); });
    CHECK(one.merged() == Days{isLast ? "2024-01-10" : "2025-01-10"});
    CHECK(one.two.robin->conflicts().empty());
}

TEST_CASE("A line that both took out is gone, and nothing else")
{
    WithWrench one({"2023-01-10", "2024-01-10"});
    for (auto *copy : {&one.two.robin, one.sascha.get()})
        one.change(*copy, [](Calibrations &list) { list.pop_back(); });
    CHECK(one.merged() == Days{"2023-01-10"});
    CHECK(one.two.robin->conflicts().empty());
}

TEST_CASE("A change to a line that the other copy took out is told as something to decide")
{
    WithWrench one({"2023-01-10", "2024-01-10"});
    one.change(one.two.robin, [](Calibrations &list) { list.pop_back(); });
    one.change(*one.sascha,
               [](Calibrations &list) { list.back().due_on = Moment::parse("2024-07-10"); });
    CHECK(one.merged() == Days{"2023-01-10"});
    const auto conflicts = one.two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().kind == ConflictKind::Value);
    CHECK(conflicts.front().field == "calibrations");
    CHECK(conflicts.front().item == 1);
}

TEST_CASE("Of two changes to one field of a line the later stands, and the other is told")
{
    WithWrench one({"2023-01-10", "2024-01-10"});
    const auto dueOn = [](const char *day) {
        return [day](Calibrations &list) { list.back().due_on = Moment::parse(day); };
    };
    one.change(one.two.robin, dueOn("2024-07-10"));
    one.change(*one.sascha, dueOn("2024-10-10"));
    CHECK(one.merged() == Days{"2023-01-10", "2024-01-10"});
    const auto &list = one.two.robin->records()->find(one.wrench)->calibrations;
    CHECK(list.front().due_on == Moment::parse("2024-01-10"));
    CHECK(list.back().due_on == Moment::parse("2024-10-10"));
    const auto conflicts = one.two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().field == "calibrations.due_on");
    CHECK(conflicts.front().item == 1);
    CHECK(conflicts.front().lost == "\"2024-07-10\"");
}

TEST_CASE("What a photograph shows is linked once, however many copies say so")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    const auto spar = two.part(two.robin, "Spar");
    Id<Media> photo;
    two.later(two.robin);
    two.robin.change("Photo", [&](Edit &edit) {
        Media media;
        media.kind = MediaKind::Photo;
        media.file = "photos/rib.jpg";
        media.links = {{RecordType::Component, two.wing.value()}};
        photo = edit.put(media);
    });
    ProjectCopy sascha(two.robin, "Sascha");
    const auto link = [&](ProjectCopy &copy, std::initializer_list<Id<Component>> parts) {
        two.later(copy);
        copy.change("Links", [&](Edit &edit) {
            edit.update(photo, [&](Media &media) {
                for (const Id<Component> part : parts)
                    media.links.push_back({RecordType::Component, part.value()});
            });
        });
    };
    link(two.robin, {rib, spar});
    link(sascha, {spar});
    two.robin.merge(sascha);
    CHECK(two.robin->records()->find(photo)->links ==
          std::vector<Media::Link>{{RecordType::Component, two.wing.value()},
                                   {RecordType::Component, rib.value()},
                                   {RecordType::Component, spar.value()}});
}

TEST_CASE("In a set what one added and the other took out both counts")
{
    TwoCopies two;
    const auto rib = two.part(two.robin, "Rib");
    const auto spar = two.part(two.robin, "Spar");
    const auto access = [&](ProjectCopy &copy, IdSet<Component> parts) {
        two.later(copy);
        copy.change("Access", [&](Edit &edit) {
            edit.update(two.squawk, [&](Squawk &squawk) { squawk.needs_access_to = parts; });
        });
    };
    access(two.robin, {rib});
    ProjectCopy sascha(two.robin, "Sascha");
    access(two.robin, {});
    access(sascha, {rib, spar});
    two.robin.merge(sascha);
    CHECK(two.robin->records()->find(two.squawk)->needs_access_to == IdSet<Component>{spar});
    CHECK(two.robin->conflicts().empty());
}

namespace {

/// Two copies of a project with work that Robin and a paid helper did.
struct WithHelper {
    TwoCopies two;
    Id<Person> bo;
    Id<WorkSession> session;
    std::unique_ptr<ProjectCopy> sascha;

    WithHelper()
    {
        two.later(two.robin);
        two.robin.change("Work", [this](Edit &edit) {
            Person person;
            person.name = "Bo";
            person.roles = {Role::Helper};
            bo = edit.put(person);
            WorkSession work;
            work.began = edit.today();
            work.minutes = Minutes{60};
            work.component_id = two.wing;
            work.workers = {{edit.records().people.begin()->id, Minutes{60}, false},
                            {bo, Minutes{60}, true}};
            session = edit.put(work);
        });
        sascha = std::make_unique<ProjectCopy>(two.robin, "Sascha");
    }
    template <class Body> void change(ProjectCopy &copy, const Body &body)
    {
        two.later(copy);
        copy.change("Workers", [&](Edit &edit) {
            edit.update(session, [&](WorkSession &work) { body(work.workers); });
        });
    }
    void takeBoOut(ProjectCopy &copy)
    {
        change(copy, [this](auto &workers) {
            std::erase_if(workers, [this](const auto &worker) { return worker.person_id == bo; });
        });
    }
    void giveBo(ProjectCopy &copy, std::int64_t minutes)
    {
        change(copy, [&](auto &workers) {
            for (auto &worker : workers) {
                if (worker.person_id == bo)
                    worker.minutes = Minutes{minutes};
            }
        });
    }
    const WorkSession::Worker *boIn(ProjectCopy &copy) const
    {
        for (const auto &worker : copy->records()->find(session)->workers) {
            if (worker.person_id == bo)
                return &worker;
        }
        return nullptr;
    }
};

} // namespace

TEST_CASE("A worker taken out before another copy changed his minutes is back, and still paid")
{
    WithHelper one;
    one.takeBoOut(one.two.robin);
    one.giveBo(*one.sascha, 20);
    one.two.robin.merge(*one.sascha);
    const auto records = one.two.robin->records();
    const auto *bo = one.boIn(one.two.robin);
    REQUIRE(bo);
    CHECK(bo->minutes == Minutes{20});
    CHECK(bo->paid);
    CHECK(records->find(one.session)->workers.size() == 2);
}

TEST_CASE("A worker whom the other copy left as he was goes when he is taken out")
{
    WithHelper one;
    one.two.note(*one.sascha, "Primed");
    one.takeBoOut(one.two.robin);
    one.two.robin.merge(*one.sascha);
    CHECK_FALSE(one.boIn(one.two.robin));
    CHECK(one.two.robin->conflicts().empty());
}

TEST_CASE("Of two changes to a worker's minutes the later stands, and the other is told of him")
{
    WithHelper one;
    one.giveBo(one.two.robin, 30);
    one.giveBo(*one.sascha, 20);
    one.two.robin.merge(*one.sascha);
    REQUIRE(one.boIn(one.two.robin));
    CHECK(one.boIn(one.two.robin)->minutes == Minutes{20});
    const auto conflicts = one.two.robin->conflicts();
    REQUIRE(conflicts.size() == 1);
    CHECK(conflicts.front().field == "workers.minutes");
    CHECK(conflicts.front().item == one.bo.value());
    CHECK(conflicts.front().lost == "30");
}
