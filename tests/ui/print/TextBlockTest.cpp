// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/TextBlock.h"

#include "ui/print/Measures.h"

#include <catch2/catch.hpp>

using namespace lastrivet::print;

TEST_CASE("A text that fits its lines is left as it is")
{
    const QString text = QStringLiteral("Finished, before the final inspection and first flight");
    const double width = TextBlock(text, Size::Body, points(1000)).naturalWidth() + 1;
    const TextBlock block = fitted(text, Size::Body, width, 1);
    CHECK(block.lineCount() == 1);
    CHECK(block.lengthOf(1) == text.size());
    CHECK(fitted(QString(), Size::Body, width, 1).lineCount() <= 1);
}

TEST_CASE("A text that is cut says so, on no more lines than it may have")
{
    const QString text = QStringLiteral("Finished, before the final inspection and first flight");
    for (const int lines : {1, 2}) {
        const TextBlock whole(text, Size::Body, points(90));
        REQUIRE(whole.lineCount() > lines);
        const TextBlock block = fitted(text, Size::Body, points(90), lines);
        CHECK(block.lineCount() == lines);
        CHECK(block.naturalWidth() <= points(90));
        CHECK(block.lengthOf(lines) <= whole.lengthOf(lines) + 1);
    }
}
