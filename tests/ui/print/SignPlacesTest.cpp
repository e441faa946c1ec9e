// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SignPlaces.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

constexpr double gap = 3;
const QRectF field(0, 0, 400, 250);

print::SignedMark discAt(double x, double y)
{
    return {{x - 4, y - 4, 8, 8}, {8, 12}};
}

/// Every sign lies in the field, on no mark and on no other sign.
void checkReadable(const std::vector<print::SignedMark> &marks)
{
    const std::vector<QRectF> places = print::placesOfSigns(marks, field, gap);
    REQUIRE(places.size() == marks.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        INFO(i);
        CHECK(field.contains(places[i]));
        for (const print::SignedMark &mark : marks)
            CHECK_FALSE(mark.mark.intersects(places[i]));
        for (std::size_t other = 0; other < i; ++other)
            CHECK_FALSE(places[other].intersects(places[i]));
    }
}

} // namespace

TEST_CASE("A sign that is alone stands close beside its mark, at the side that was asked for")
{
    print::SignedMark mark = discAt(100, 100);
    const auto right = print::placesOfSigns({mark}, field, gap);
    CHECK(right.front() == QRectF(107, 94, 8, 12));
    mark.begins_left = true;
    const auto left = print::placesOfSigns({mark}, field, gap);
    CHECK(left.front() == QRectF(85, 94, 8, 12));
}

TEST_CASE("Signs of marks at one place, or close to each other, stand apart")
{
    checkReadable(std::vector<print::SignedMark>(8, discAt(200, 120)));
    std::vector<print::SignedMark> row;
    for (int i = 0; i < 12; ++i)
        row.push_back(discAt(150 + 6 * i, 120 + 2 * i));
    checkReadable(row);
    // A loading that is an extreme as well: a disc within a triangle, whose sign begins at the
    // left.
    checkReadable({discAt(200, 120), {{188, 110, 18, 20}, {8, 12}, true}});
}

TEST_CASE("At the edge of the picture a sign stands at the side where there is room")
{
    checkReadable({discAt(396, 100), discAt(4, 100), discAt(396, 246), discAt(4, 4)});
}

TEST_CASE("A picture too full for its signs shows them all the same")
{
    const std::vector<print::SignedMark> many(200, discAt(200, 120));
    CHECK(print::placesOfSigns(many, field, gap).size() == 200);
}
