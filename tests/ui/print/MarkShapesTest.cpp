// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MarkShapes.h"

#include <catch2/catch.hpp>

#include <vector>

namespace lastrivet::print {

namespace {

const QRectF picture(0, 0, 1000, 600);
constexpr double lineWidth = 6;

/// The box of long words at the tail of an arrow.
QRectF boxAt(QPointF tail, QPointF head, double width = 400)
{
    Media::Annotation arrow;
    arrow.shape = AnnotationShape::Arrow;
    const QPainterPath line = outline(arrow, {tail, head}, 18);
    return wordsBox(picture, tail, {width, 40}, line, lineWidth);
}

} // namespace

TEST_CASE("The words of an arrow stand beside it, whatever way it points, and on the picture")
{
    const QPointF tail(500, 300);
    for (const QPointF head :
         {QPointF(700, 310), QPointF(700, 500), QPointF(500, 500), QPointF(300, 500),
          QPointF(300, 300), QPointF(300, 100), QPointF(500, 100), QPointF(700, 100)}) {
        const QRectF box = boxAt(tail, head);
        INFO("to " << head.x() << ", " << head.y());
        CHECK(picture.contains(box));
        CHECK_FALSE(box.adjusted(-lineWidth, -lineWidth, lineWidth, lineWidth).contains(head));
        CHECK_FALSE(box.contains((tail + head) / 2));
    }
}

TEST_CASE("Words stand right below their place where nothing is in the way")
{
    CHECK(boxAt({500, 300}, {300, 100}) == QRectF(500, 300, 400, 40));
    CHECK(wordsBox(picture, {100, 100}, {80, 40}, {}, lineWidth) == QRectF(100, 100, 80, 40));
    // At the edge they are moved onto the picture.
    CHECK(wordsBox(picture, {990, 590}, {80, 40}, {}, lineWidth) == QRectF(920, 560, 80, 40));
    // What is wider than the picture begins with it.
    CHECK(wordsBox(picture, {990, 100}, {1200, 40}, {}, lineWidth) == QRectF(0, 100, 1200, 40));
}

TEST_CASE("At the edge, too, long words do not cover the head of their arrow")
{
    // To the right of the tail there is no room, and above it the arrow.
    const QPointF head(700, 560);
    CHECK_FALSE(boxAt({950, 580}, head).contains(head));
}

} // namespace lastrivet::print
