// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Hatch.h"

#include "ui/shell/Colours.h"

#include <QImage>
#include <QPainter>
#include <QPainterPath>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

using readiness::State;

constexpr int edge = 48;

/// As a photocopier sees it: black where it is darker than half.
QImage copied(std::optional<State> state, bool begun, const Colours &colours)
{
    QImage image(edge, edge, QImage::Format_RGB32);
    image.fill(colours.surface);
    QPainter painter(&image);
    QPainterPath box;
    box.addRect(QRectF(2, 2, edge - 4, edge - 4));
    paintHatched(painter, box, state, begun, colours);
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

int differing(const QImage &a, const QImage &b)
{
    int count = 0;
    for (int y = 0; y < edge; ++y) {
        for (int x = 0; x < edge; ++x)
            count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 40;
    }
    return count;
}

} // namespace

TEST_CASE("States are told apart by their hatching when all colour is gone")
{
    const std::pair<std::optional<State>, bool> looks[] = {
        {std::nullopt, false},         {State::Hold, false},       {State::Hold, true},
        {State::ReadyToInspect, true}, {State::ReadyToSign, true}, {State::Clear, true},
        {State::Closed, true},         {State::ClosedEarly, true},
    };
    for (const Colours *colours : {&Colours::light(), &Colours::dark()}) {
        for (std::size_t i = 0; i < std::size(looks); ++i) {
            for (std::size_t k = i + 1; k < std::size(looks); ++k) {
                INFO(i << " and " << k);
                const QImage first = copied(looks[i].first, looks[i].second, *colours);
                const QImage second = copied(looks[k].first, looks[k].second, *colours);
                // More than the outline of the box alone could make.
                CHECK(differing(first, second) > (i == 0 && k == 1 ? 20 : edge * 4));
            }
        }
    }
}

} // namespace lastrivet::ui
