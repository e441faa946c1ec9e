// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/Zoom.h"

#include <catch2/catch.hpp>

using lastrivet::ui::Zoom;

namespace {

Zoom landscape()
{
    Zoom zoom;
    zoom.setView({400, 400});
    zoom.setPicture({4000, 2000});
    return zoom;
}

} // namespace

TEST_CASE("A picture is shown whole in the middle of its view")
{
    const Zoom zoom = landscape();
    CHECK(zoom.isWhole());
    CHECK(zoom.scale() == Approx(0.1));
    CHECK(zoom.place() == QRectF(0, 100, 400, 200));
    CHECK(zoom.toPicture({200, 200}) == QPointF(0.5, 0.5));
}

TEST_CASE("The place under the mouse stays under it while the picture is enlarged")
{
    Zoom zoom = landscape();
    const QPointF mouse(300, 150);
    const QPointF before = zoom.toPicture(mouse);
    zoom.zoomTo(1, mouse);
    CHECK(zoom.scale() == Approx(1.0));
    CHECK(zoom.toPicture(mouse).x() == Approx(before.x()));
    CHECK(zoom.toPicture(mouse).y() == Approx(before.y()));
}

TEST_CASE("A picture is never moved out of sight, nor made smaller than whole")
{
    Zoom zoom = landscape();
    zoom.zoomTo(0.2, {200, 200});
    zoom.moveBy({5000, 5000});
    CHECK(zoom.place().topLeft() == QPointF(0, 0));
    zoom.moveBy({-5000, -5000});
    CHECK(zoom.place().right() == Approx(400));
    zoom.zoomTo(0.001, {10, 10});
    CHECK(zoom.isWhole());
    CHECK(zoom.place() == QRectF(0, 100, 400, 200));
}
