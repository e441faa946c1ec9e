// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/steps/Layering.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <random>
#include <set>

namespace lastrivet::steps {

namespace {

/// Random arrows from lower to higher numbers, then numbers dealt anew.
std::vector<Arrow> randomArrows(std::mt19937 &random, std::size_t nodes, std::size_t count)
{
    std::vector<std::size_t> names(nodes);
    for (std::size_t i = 0; i < nodes; ++i)
        names[i] = i;
    std::ranges::shuffle(names, random);
    std::vector<Arrow> arrows;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t a = random() % nodes;
        const std::size_t b = random() % nodes;
        if (a != b)
            arrows.push_back({names[std::min(a, b)], names[std::max(a, b)]});
    }
    return arrows;
}

std::set<Arrow> reachable(std::size_t nodes, const std::vector<Arrow> &arrows)
{
    std::set<Arrow> pairs(arrows.begin(), arrows.end());
    for (std::size_t middle = 0; middle < nodes; ++middle) {
        for (std::size_t a = 0; a < nodes; ++a) {
            for (std::size_t b = 0; b < nodes; ++b) {
                if (pairs.contains({a, middle}) && pairs.contains({middle, b}))
                    pairs.insert({a, b});
            }
        }
    }
    return pairs;
}

} // namespace

TEST_CASE("A step that three others lead to stands behind the last of them")
{
    // 0 → 1 → 2 → 3, 0 → 3 is implied, 4 → 3.
    const Layering drawn = layered(5, {{0, 1}, {1, 2}, {2, 3}, {0, 3}, {4, 3}});
    CHECK(drawn.layers == 4);
    CHECK(drawn.places[3].layer == 3);
    CHECK(drawn.places[4].layer == 0);
    REQUIRE(drawn.lines.size() == 4);
    const auto &longest = drawn.lines.back();
    CHECK(longest.from == 4);
    CHECK(longest.via.size() == 2);
}

TEST_CASE("In random graphs every line goes forward, nothing shares a place, and what comes before "
          "what stays as it was")
{
    std::mt19937 random(11);
    for (int round = 0; round < 60; ++round) {
        const std::size_t nodes = 2 + random() % 24;
        const auto arrows = randomArrows(random, nodes, random() % (3 * nodes));
        const Layering drawn = layered(nodes, arrows);
        std::set<std::pair<std::size_t, std::size_t>> taken;
        for (const auto &place : drawn.places)
            CHECK(taken.emplace(place.layer, place.row).second);
        std::vector<Arrow> kept;
        for (const auto &line : drawn.lines) {
            kept.push_back({line.from, line.to});
            std::size_t layer = drawn.places[line.from].layer;
            for (const auto &point : line.via) {
                CHECK(point.layer == ++layer);
                CHECK(taken.emplace(point.layer, point.row).second);
            }
            CHECK(drawn.places[line.to].layer == layer + 1);
        }
        for (const auto &[layer, row] : taken)
            CHECK((layer < drawn.layers && row < drawn.rows));
        CHECK(reachable(nodes, kept) == reachable(nodes, arrows));
    }
}

} // namespace lastrivet::steps
