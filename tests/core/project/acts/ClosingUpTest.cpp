// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/ClosingUp.h"

#include "tests/support/ActBench.h"

#include <algorithm>

namespace lastrivet::acts {

namespace {

Id<Closing> add(test::ActBench &bench, Closing closing)
{
    Id<Closing> id;
    closing.component_id = bench.wing;
    closing.title = "Upper skin";
    bench.change([&](Edit &edit) { id = addClosing(edit, closing, {}); });
    return id;
}

std::vector<HoldPointKind> kinds(const Records &records, Id<Closing> closing)
{
    std::vector<HoldPointKind> found;
    for (const HoldPoint &point : records.hold_points) {
        if (point.closing_id == closing)
            found.push_back(point.kind);
    }
    std::ranges::sort(found);
    return found;
}

} // namespace

TEST_CASE("A new closing encloses its own part and gets the hold points of the country")
{
    using enum HoldPointKind;
    test::ActBench canada("ca");
    const auto closing = add(canada, {});
    CHECK(canada.records()->find(closing)->encloses == IdSet<Component>{canada.wing});
    CHECK(kinds(*canada.records(), closing) == std::vector{ToolAndDebrisCheck, PreCover});

    // A technical visit is for what holds a wing, a tank, a fuselage or a control surface.
    test::ActBench states("us");
    CHECK(kinds(*states.records(), add(states, {})) ==
          std::vector{OwnCheck, ToolAndDebrisCheck, TechnicalVisit});
    states.change([&](Edit &edit) {
        edit.update(states.tank, [](Component &part) { part.kind = ComponentKind::Part; });
        edit.update(states.wing, [](Component &part) { part.kind = ComponentKind::Assembly; });
    });
    CHECK(kinds(*states.records(), add(states, {})) == std::vector{OwnCheck, ToolAndDebrisCheck});
}

TEST_CASE("Factory-made and removable closings get no hold points")
{
    test::ActBench bench;
    Closing closing;
    closing.made_by = MadeBy::Factory;
    CHECK(kinds(*bench.records(), add(bench, closing)).empty());
    closing.made_by = MadeBy::Builder;
    closing.permanent = false;
    CHECK(kinds(*bench.records(), add(bench, closing)).empty());
}

TEST_CASE("The closing of the whole aircraft encloses nothing by name and waits for the final one")
{
    test::ActBench bench;
    Closing closing;
    closing.scope = ClosingScope::Aircraft;
    closing.encloses = {bench.wing};
    const auto id = add(bench, closing);
    CHECK(bench.records()->find(id)->encloses.empty());
    CHECK(kinds(*bench.records(), id) == std::vector{HoldPointKind::Final});
}

TEST_CASE("The offered lists are those of what is enclosed, and become lines of the closing")
{
    test::ActBench bench;
    Closing closing;
    closing.component_id = bench.wing;
    const auto &profile = (*bench).profile();
    const auto lists = fittingChecklists(*bench.records(), profile, closing);
    const auto has = [&](std::string_view key) {
        return std::ranges::any_of(lists, [&](const auto *list) { return list->key == key; });
    };
    CHECK(has("common"));
    CHECK(has("wing"));
    CHECK(has("fuel_tank"));
    CHECK_FALSE(has("wood"));
    closing.title = "Upper skin";
    bench.change([&](Edit &edit) { addClosing(edit, closing, lists); });
    std::size_t lines = 0;
    for (const auto *list : lists)
        lines += list->items.size();
    CHECK(bench.records()->checks.size() == lines);
}

TEST_CASE("Closing does the steps that close it, reopening leaves them")
{
    test::ActBench bench;
    const auto closing = add(bench, {});
    Id<Step> closes;
    Id<Step> other;
    bench.change([&](Edit &edit) {
        Step step;
        step.component_id = bench.wing;
        step.title = "Rivet the skin";
        step.closes = closing;
        closes = edit.put(step);
        step.closes = {};
        other = edit.put(step);
        close(edit, closing, {edit.today(), bench.builder, "in a hurry"});
    });
    CHECK(isClosed(*bench.records()->find(closing), (*bench).today()));
    CHECK(bench.records()->find(closes)->done_on == (*bench).today());
    CHECK_FALSE(bench.records()->find(other)->done_on);
    bench.change([&](Edit &edit) {
        reopen(edit, closing, {edit.today(), bench.builder, "a lost rag"});
    });
    const auto &reopened = *bench.records()->find(closing);
    CHECK_FALSE(isClosed(reopened, (*bench).today()));
    CHECK(reopened.events.size() == 2);
    CHECK(reopened.events.front().reason == "in a hurry");
    CHECK(bench.records()->find(closes)->done_on);
}

TEST_CASE("What is closed cannot be closed again")
{
    test::ActBench bench;
    const auto closing = add(bench, {});
    const Act act{(*bench).today(), bench.builder, {}};
    bench.change([&](Edit &edit) { close(edit, closing, act); });
    CHECK(bench.isRefused([&](Edit &edit) { close(edit, closing, act); }));
    CHECK(bench.records()->find(closing)->events.size() == 1);
}

TEST_CASE("Lines are ticked, unticked and set aside; what is set aside carries no tick")
{
    test::ActBench bench;
    const auto closing = add(bench, {});
    Id<Check> line;
    bench.change([&](Edit &edit) {
        Check check;
        check.closing_id = closing;
        check.item = "Drains are open";
        line = edit.put(check);
        tick(edit, {line}, bench.builder, edit.today());
    });
    CHECK(bench.records()->find(line)->done_by == bench.builder);
    bench.change([&](Edit &edit) { setNotApplicable(edit, line, true); });
    CHECK(bench.records()->find(line)->not_applicable);
    CHECK_FALSE(bench.records()->find(line)->done_on);
    bench.change([&](Edit &edit) { tick(edit, {line}, bench.builder, edit.today()); });
    CHECK_FALSE(bench.records()->find(line)->not_applicable);
    bench.change([&](Edit &edit) { untick(edit, line); });
    CHECK_FALSE(bench.records()->find(line)->done_by);
}

TEST_CASE("What comes on a later day than a closing comes after it, unless it was opened again")
{
    const auto on = [](std::string_view text) { return *Moment::parse(text); };
    Closing closing;
    CHECK_FALSE(closedBefore(closing, on("2026-03-10")));
    Closing::Event event;
    event.closed_on = on("2026-03-10");
    closing.events.push_back(event);
    CHECK_FALSE(closedBefore(closing, on("2026-03-09")));
    CHECK_FALSE(closedBefore(closing, on("2026-03-10T18:00")));
    CHECK(closedBefore(closing, on("2026-03-11")) == on("2026-03-10"));
    Closing::Event opening;
    opening.opened_on = on("2026-03-12");
    closing.events.push_back(opening);
    CHECK(closedBefore(closing, on("2026-03-11")) == on("2026-03-10"));
    CHECK_FALSE(closedBefore(closing, on("2026-03-13")));
}

} // namespace lastrivet::acts
