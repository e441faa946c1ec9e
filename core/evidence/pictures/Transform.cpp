// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/Transform.h"

#include <stb_image_resize.h>

#include <algorithm>
#include <cstring>
#include <new>
#include <utility>

namespace lastrivet::evidence {

namespace {

/// Where the pixels of the turned picture come from: an offset and two steps in the stored one.
struct Route {
    std::ptrdiff_t start;
    std::ptrdiff_t right;
    std::ptrdiff_t down;
};

Route routeFor(int orientation, std::ptrdiff_t width, std::ptrdiff_t height)
{
    const std::ptrdiff_t lastColumn = width - 1;
    const std::ptrdiff_t lastRow = (height - 1) * width;
    switch (orientation) {
    case 2:
        return {lastColumn, -1, width};
    case 3:
        return {lastRow + lastColumn, -1, -width};
    case 4:
        return {lastRow, 1, -width};
    case 5:
        return {0, width, 1};
    case 6:
        return {lastRow, -width, 1};
    case 7:
        return {lastRow + lastColumn, -width, -1};
    case 8:
        return {lastColumn, width, -1};
    default:
        return {0, 1, width};
    }
}

/// Square by square, so that walking down columns stays in the cache.
constexpr int square = 32;

void copySquare(const Pixels &from, Pixels &to, Route route, int left, int top)
{
    const int right = std::min(left + square, to.width);
    const int bottom = std::min(top + square, to.height);
    const auto *source = std::span<const std::uint8_t>(from.rgb).data();
    for (int y = top; y < bottom; ++y) {
        std::uint8_t *target = to.rgb.data() + 3 * (std::ptrdiff_t(y) * to.width + left);
        std::ptrdiff_t place = route.start + y * route.down + left * route.right;
        for (int x = left; x < right; ++x, place += route.right, target += 3)
            std::memcpy(target, source + 3 * place, 3);
    }
}

} // namespace

PixelSize fitted(PixelSize size, int edge)
{
    const int longest = std::max(size.width, size.height);
    if (longest <= edge)
        return size;
    const auto scaled = [&](int length) {
        const std::int64_t twice = 2 * std::int64_t{length} * edge / longest;
        return std::max(1, int((twice + 1) / 2));
    };
    return {scaled(size.width), scaled(size.height)};
}

Pixels resampled(const Pixels &pixels, PixelSize size)
{
    Pixels result(size.width, size.height);
    const auto *source = std::span<const std::uint8_t>(pixels.rgb).data();
    if (!stbir_resize_uint8(source, pixels.width, pixels.height, 0, result.rgb.data(), size.width,
                            size.height, 0, 3))
        throw std::bad_alloc();
    return result;
}

Pixels upright(Pixels pixels, int orientation)
{
    if (orientation <= 1)
        return pixels;
    const bool sideways = turnsSideways(orientation);
    Pixels turned(sideways ? pixels.height : pixels.width, sideways ? pixels.width : pixels.height);
    const Route route = routeFor(orientation, pixels.width, pixels.height);
    for (int top = 0; top < turned.height; top += square) {
        for (int left = 0; left < turned.width; left += square)
            copySquare(pixels, turned, route, left, top);
    }
    return turned;
}

} // namespace lastrivet::evidence
