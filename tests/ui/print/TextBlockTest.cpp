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

TEST_CASE("The code of a part is not torn at its hyphen where a line has room for it")
{
    const QString text = QStringLiteral("Bond, left tank bay to root fitting in LW-SF, and the "
                                        "second one in RW-SF 2: both self-locking");
    bool isBeforeCode = false;
    for (int width = 70; width < 400; ++width) {
        INFO(width);
        const TextBlock block(text, Size::Small, points(width));
        CHECK(block.naturalWidth() <= points(width) + 1);
        CHECK(block.lengthOf(block.lineCount()) == text.size());
        for (int line = 1; line < block.lineCount(); ++line) {
            const QString drawn = text.left(block.lengthOf(line));
            CHECK_FALSE(drawn.endsWith(QLatin1String("W-")));
            isBeforeCode = isBeforeCode || drawn.trimmed().endsWith(QLatin1String(" in"));
        }
    }
    CHECK(isBeforeCode);
    // A narrower place than the code tears it, and loses nothing.
    const QString code = QStringLiteral("LW-SF");
    const TextBlock narrow(code, Size::Small, points(20));
    CHECK(narrow.lengthOf(narrow.lineCount()) == code.size());
}

TEST_CASE("A code is not torn behind a bracket or a quotation mark either")
{
    const QString text = QStringLiteral(
        "the left wing (LW-SF), der rechte Flügel „RW-SF“, puis l’aile «\u00a0LW-SF\u00a0», "
        "and the opening of “RW-SF” once more");
    int torn = 0;
    for (int width = 90; width < 400; ++width) {
        const TextBlock block(text, Size::Small, points(width));
        CHECK(block.lengthOf(block.lineCount()) == text.size());
        for (int line = 1; line < block.lineCount(); ++line)
            torn += text.left(block.lengthOf(line)).endsWith(QLatin1String("W-")) ? 1 : 0;
    }
    CHECK(torn == 0);
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
