// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/PartActs.h"

#include "tests/support/ActBench.h"

namespace lastrivet::test {

namespace {

using Names = std::vector<std::string>;

Names namesInside(const Records &records, Id<Component> parent)
{
    Names names;
    for (const auto id : acts::partsInside(records, parent))
        names.push_back(records.find(id)->name);
    return names;
}

} // namespace

TEST_CASE("A part is added where it is wanted, and moves with everything below it")
{
    ActBench bench;
    Id<Component> rib;
    bench.change([&](Edit &edit) {
        acts::addPart(edit, Component{.parent_id = bench.wing, .name = "Tip"}, 99);
        rib = acts::addPart(edit, Component{.parent_id = bench.wing, .name = "Rib"}, 1);
    });
    CHECK(namesInside(*bench.records(), bench.wing) == Names{"Tank", "Rib", "Tip"});
    bench.change([&](Edit &edit) { acts::movePart(edit, rib, bench.wing, 0); });
    CHECK(namesInside(*bench.records(), bench.wing) == Names{"Rib", "Tank", "Tip"});
    bench.change([&](Edit &edit) { acts::movePart(edit, bench.tank, {}, 0); });
    CHECK(namesInside(*bench.records(), {}) == Names{"Tank", "Wing"});
    CHECK(namesInside(*bench.records(), bench.wing) == Names{"Rib", "Tip"});
}

TEST_CASE("A part does not go into itself")
{
    ActBench bench;
    CHECK(bench.isRefused([&](Edit &edit) { acts::movePart(edit, bench.wing, bench.tank, 0); }));
    CHECK(namesInside(*bench.records(), {}) == Names{"Wing"});
}

TEST_CASE("Several parts move together, in the order of the tree, and what lies in one stays in it")
{
    ActBench bench;
    Id<Component> a;
    Id<Component> b;
    Id<Component> c;
    Id<Component> inB;
    bench.change([&](Edit &edit) {
        a = acts::addPart(edit, Component{.name = "A"}, 99);
        b = acts::addPart(edit, Component{.name = "B"}, 99);
        c = acts::addPart(edit, Component{.name = "C"}, 99);
        inB = acts::addPart(edit, Component{.parent_id = b, .name = "In B"}, 99);
    });
    bench.change([&](Edit &edit) { acts::moveParts(edit, {c, inB, b}, bench.wing, bench.tank); });
    CHECK(acts::partsInside(*bench.records(), bench.wing) ==
          std::vector<Id<Component>>{b, c, bench.tank});
    CHECK(bench.records()->find(inB)->parent_id == b);
    // Before one of themselves: it stays where it is.
    bench.change([&](Edit &edit) { acts::moveParts(edit, {b, c}, bench.wing, c); });
    CHECK(acts::partsInside(*bench.records(), bench.wing) ==
          std::vector<Id<Component>>{b, c, bench.tank});
    CHECK(bench.isRefused([&](Edit &edit) { acts::moveParts(edit, {b}, inB, {}); }));
}

} // namespace lastrivet::test
