// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SignPlaces.h"

#include <algorithm>
#include <array>

namespace lastrivet::print {

namespace {

/// Sides and corners of a mark: to the right and downwards are positive.
struct Direction {
    int across;
    int down;
};

constexpr std::array<Direction, 8> directions{
    {{1, 0}, {-1, 0}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}, {0, -1}, {0, 1}}};
/// How often a sign is tried farther away, and by how many gaps.
constexpr int rings = 5;
constexpr int gapsBetweenRings = 3;

double beside(double low, double high, double extent, int side, double away)
{
    if (side == 0)
        return (low + high - extent) / 2;
    return side > 0 ? high + away : low - away - extent;
}

QRectF placed(const SignedMark &signedMark, Direction direction, double away)
{
    const QRectF &mark = signedMark.mark;
    const QSizeF &size = signedMark.sign;
    const int across = signedMark.begins_left ? -direction.across : direction.across;
    return {{beside(mark.left(), mark.right(), size.width(), across, away),
             beside(mark.top(), mark.bottom(), size.height(), direction.down, away)},
            size};
}

bool isFree(const QRectF &place, const std::vector<SignedMark> &marks,
            const std::vector<QRectF> &taken)
{
    return std::none_of(marks.begin(), marks.end(),
                        [&](const SignedMark &each) { return each.mark.intersects(place); }) &&
           std::none_of(taken.begin(), taken.end(),
                        [&](const QRectF &each) { return each.intersects(place); });
}

QRectF placeOf(const SignedMark &signedMark, const std::vector<SignedMark> &marks,
               const std::vector<QRectF> &taken, const QRectF &field, double gap)
{
    for (int ring = 0; ring < rings; ++ring) {
        for (const Direction direction : directions) {
            const QRectF place = placed(signedMark, direction, gap * (1 + gapsBetweenRings * ring));
            if (field.contains(place) && isFree(place, marks, taken))
                return place;
        }
    }
    return placed(signedMark, directions.front(), gap);
}

} // namespace

std::vector<QRectF> placesOfSigns(const std::vector<SignedMark> &marks, const QRectF &field,
                                  double gap)
{
    std::vector<QRectF> places;
    for (const SignedMark &mark : marks)
        places.push_back(placeOf(mark, marks, places, field, gap));
    return places;
}

} // namespace lastrivet::print
