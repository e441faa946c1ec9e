// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/WrappedText.h"

#include <QFontMetrics>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>

#include <catch2/catch.hpp>

using namespace lastrivet::ui;

namespace {

int widthOf(const QString &text)
{
    return QFontMetrics(QGuiApplication::font()).horizontalAdvance(text);
}

QStringList lines(const QString &text, int width, int most)
{
    return wrapped(text, QGuiApplication::font(), width, most);
}

const QString sentence = QStringLiteral("Fit the root fittings, torque and lock");

} // namespace

TEST_CASE("Where there is room for one line, a text of several is painted as one")
{
    const auto painted = [](const QString &text) {
        QImage image(widthOf(sentence), QFontMetrics(QGuiApplication::font()).height(),
                     QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.setFont(QGuiApplication::font());
        paintCut(painter, image.rect(), text);
        painter.end();
        return image;
    };
    CHECK(painted(QStringLiteral("Drilled\ndeburred")) ==
          painted(QStringLiteral("Drilled deburred")));
    CHECK(painted(QStringLiteral("Drilled\ndeburred")) != painted(QStringLiteral("Drilled")));
}

TEST_CASE("A text is broken between words, and every line fits")
{
    const int width = widthOf(QStringLiteral("Fit the root fittings,")) + 2;
    const QStringList found = lines(sentence, width, 5);
    CHECK(found.size() > 1);
    CHECK(found.join(QLatin1Char(' ')) == sentence);
    for (const QString &line : found)
        CHECK(widthOf(line) <= width);
    CHECK(lines(sentence, widthOf(sentence) + 2, 5) == QStringList{sentence});
    CHECK(lines({}, width, 5) == QStringList{QString()});
}

TEST_CASE("The code of a part is not broken at its hyphen, and stays as it is written")
{
    const QString before = QStringLiteral("The upper skin of");
    const QString text = before + QStringLiteral(" LW-B3");
    const int width = widthOf(before + QStringLiteral(" LW-")) + 2;
    CHECK(lines(text, width, 5) == QStringList{before, QStringLiteral("LW-B3")});
    CHECK(unbroken(QStringLiteral("LW-B3, half-done")) == QStringLiteral("LW\u2011B3, half-done"));
}

TEST_CASE("A word longer than any page is wide may be broken within, and no other")
{
    const QString forty(40, QLatin1Char('W'));
    const QString soft(QChar(0x200B));
    CHECK(breakable({}).isEmpty());
    CHECK(breakable(forty) == forty);
    CHECK(breakable(forty + QLatin1Char(' ') + forty) == forty + QLatin1Char(' ') + forty);
    CHECK(breakable(forty + forty + QLatin1Char('x')) ==
          forty + soft + forty + soft + QLatin1Char('x'));
    // Not between a letter and its accent.
    const QString accented = QStringLiteral("e\u0301");
    CHECK(breakable(forty + accented) == forty + soft + accented);
    CHECK(breakable(accented.repeated(40)) == accented.repeated(40));
}

TEST_CASE(
    "What does not fit into the lines there are, and a word too long for one, ends with a mark")
{
    const int width = widthOf(QStringLiteral("Fit the root fittings,")) + 2;
    const QStringList found = lines(sentence, width, 1);
    REQUIRE(found.size() == 1);
    CHECK(found.front().endsWith(QChar(0x2026)));
    const QStringList word =
        lines(QStringLiteral("Flachrundkopfniet"), widthOf(QStringLiteral("Flach")), 3);
    REQUIRE(word.size() == 1);
    CHECK(word.front().endsWith(QChar(0x2026)));
}

TEST_CASE("The name of a file that is wider than its place is cut in its middle, and no other word")
{
    const QString name = QStringLiteral("photos/2026-05-13-right-wing-tank-bay-fittings.jpg");
    const QFontMetrics metrics(QGuiApplication::font());
    const int width = widthOf(name) * 2 / 3;
    const QString said = QStringLiteral("%1 is not there.");
    const QString found = withShortWords(said.arg(name), metrics, width);
    CHECK(found.startsWith(QStringLiteral("photos/")));
    CHECK(found.endsWith(QStringLiteral(".jpg is not there.")));
    CHECK(widthOf(found.section(QLatin1Char(' '), 0, 0)) <= width);
    CHECK(withShortWords(said.arg(QStringLiteral("a.jpg")), metrics, width) ==
          said.arg(QStringLiteral("a.jpg")));
    CHECK(withShortWords({}, metrics, width).isEmpty());
}
