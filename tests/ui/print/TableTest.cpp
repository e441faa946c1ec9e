// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Table.h"

#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Contents.h"
#include "ui/print/Facts.h"
#include "ui/print/Measures.h"
#include "ui/print/Pages.h"
#include "ui/print/Unfolded.h"

#include <catch2/catch.hpp>

#include <QFile>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

print::Table tableOf(int rows)
{
    print::Table table;
    table.columns = {{QStringLiteral("Part"), 3}, {QStringLiteral("Time"), 1, true}};
    for (int row = 1; row <= rows; ++row)
        table.rows.push_back({{{QStringLiteral("row %1.").arg(row)}, {QStringLiteral("1 h 00")}}});
    table.rows.push_back({{{QStringLiteral("Sum")}, {QStringLiteral("%1 h 00").arg(rows)}}});
    return table;
}

/// Prints the table below a heading, after so many lines.
QStringList printed(const std::filesystem::path &place, const print::Table &table,
                    int linesAbove = 0)
{
    QFile file(QString::fromStdString(place.string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    const print::Wording words;
    {
        print::Pages pages(file, print::Paper::A4, {}, words, {}, {});
        for (int line = 0; line < linesAbove; ++line)
            pages.text(QStringLiteral("above"));
        if (linesAbove > 0)
            pages.smallHeading(QStringLiteral("Heading"),
                               print::leastHeightOf(table, pages.body().width()));
        print::drawTable(pages, table);
    }
    file.close();
    return PrintedFolder::pageTexts(place);
}

} // namespace

TEST_CASE("A sum never stands alone on the last page of its table")
{
    const PrintedFolder folder;
    int overTwoPages = 0;
    for (int rows = 36; rows < 48; ++rows) {
        INFO(rows);
        const QStringList pages = printed(folder.path("table.pdf"), tableOf(rows));
        CHECK(pages.last().contains(QStringLiteral("Sum")));
        CHECK(pages.last().contains(QStringLiteral("row %1.").arg(rows)));
        overTwoPages += pages.size() == 2 ? 1 : 0;
    }
    CHECK(overTwoPages > 0);
    CHECK(overTwoPages < 12);
}

TEST_CASE("A fact of more than a page loses none of its words")
{
    const PrintedFolder folder;
    QStringList names;
    for (int part = 1; part <= 900; ++part)
        names << QStringLiteral("part %1.").arg(part);
    const auto place = folder.path("facts.pdf");
    QFile file(QString::fromStdString(place.string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    const print::Wording words;
    {
        print::Pages pages(file, print::Paper::A4, {}, words, {}, {});
        print::drawFacts(pages, {{QStringLiteral("Encloses"), names.join(QStringLiteral(", "))},
                                 {QStringLiteral("Method"), QStringLiteral("riveted")}});
    }
    file.close();
    const QString text = PrintedFolder::text(place).simplified();
    for (const int part : {1, 300, 600, 900})
        CHECK(text.contains(QStringLiteral("part %1.").arg(part)));
    CHECK(text.indexOf(QStringLiteral("riveted")) < text.indexOf(QStringLiteral("part 1.")));
    CHECK(PrintedFolder::pageTexts(place).size() > 1);
}

TEST_CASE("A heading stays with its table's first row, however high that is")
{
    const PrintedFolder folder;
    print::Table table;
    table.columns = {{QStringLiteral("What"), 1}};
    for (const int lines : {30, 45}) {
        INFO(lines);
        QStringList text{QStringLiteral("begins")};
        for (int line = 1; line < lines; ++line)
            text << QStringLiteral("goes on");
        table.rows.clear();
        table.rows.push_back({{{text.join(QLatin1Char('\n'))}}});
        const QStringList pages = printed(folder.path("table.pdf"), table, 30);
        REQUIRE(pages.size() == 2);
        CHECK_FALSE(pages.first().contains(QStringLiteral("What")));
        CHECK_FALSE(pages.first().contains(QStringLiteral("Heading")));
        CHECK(pages.last().count(QStringLiteral("goes on")) == lines - 1);
    }
}

TEST_CASE("A heading does not stand over a single row at the foot of a page")
{
    const PrintedFolder folder;
    int torn = 0;
    int together = 0;
    for (int above = 40; above < 55; ++above) {
        INFO(above);
        const QStringList pages = printed(folder.path("table.pdf"), tableOf(5), above);
        if (!pages.first().contains(QStringLiteral("Heading"))) {
            CHECK(pages.last().contains(QStringLiteral("Heading")));
            ++together;
            continue;
        }
        CHECK(pages.first().contains(QStringLiteral("row 2.")));
        torn += pages.size() == 2 ? 1 : 0;
    }
    CHECK(torn > 0);
    CHECK(together > 0);
}

TEST_CASE("A row that takes most of a page is cut, and the head stands on each page")
{
    const PrintedFolder folder;
    print::Table table;
    table.columns = {{QStringLiteral("What"), 1}};
    QStringList text{QStringLiteral("begins")};
    for (int line = 1; line < 90; ++line)
        text << QStringLiteral("goes on");
    table.rows.push_back({{{text.join(QLatin1Char('\n'))}}});
    const QStringList pages = printed(folder.path("table.pdf"), table, 25);
    REQUIRE(pages.size() == 2);
    CHECK(pages.first().contains(QStringLiteral("begins")));
    int lines = 0;
    for (const QString &page : pages) {
        CHECK(page.contains(QStringLiteral("What")));
        lines += int(page.count(QStringLiteral("goes on")));
    }
    CHECK(lines == 89);
}

TEST_CASE("A row that names others never stands alone at the foot of a page")
{
    const PrintedFolder folder;
    for (int rows = 34; rows < 48; ++rows) {
        INFO(rows);
        print::Table table = tableOf(rows);
        table.rows.pop_back();
        print::Table::Row group{{{QStringLiteral("Group")}}};
        group.is_group = true;
        table.rows.push_back(group);
        table.rows.push_back({{{QStringLiteral("one")}, {QStringLiteral("1 h 00")}}});
        table.rows.push_back({{{QStringLiteral("two")}, {QStringLiteral("2 h 00")}}});
        const QStringList pages = printed(folder.path("table.pdf"), table);
        for (const char *row : {"Group", "one", "two"})
            CHECK(pages.last().contains(QLatin1String(row)));
    }
}

TEST_CASE("A row that leads to the next one never stands alone at the foot of a page")
{
    const PrintedFolder folder;
    int overTwoPages = 0;
    for (int rows = 34; rows < 48; ++rows) {
        INFO(rows);
        print::Table table = tableOf(rows);
        print::Table::Row rule{{{QStringLiteral("Rule")}}};
        rule.is_with_next = true;
        table.rows.push_back(rule);
        for (int row = 0; row < 5; ++row)
            table.rows.push_back({{{QStringLiteral("finding")}, {QStringLiteral("1 h 00")}}});
        for (const QString &page : printed(folder.path("table.pdf"), table)) {
            if (!page.contains(QStringLiteral("Rule")))
                continue;
            CHECK(page.contains(QStringLiteral("finding")));
            overTwoPages += page.count(QStringLiteral("finding")) < 5 ? 1 : 0;
        }
    }
    CHECK(overTwoPages > 0);
}

TEST_CASE("A long text in a narrow column stands whole across the table, below its row")
{
    const PrintedFolder folder;
    print::Table table;
    for (const char *head : {"When", "What", "Kind", "Who"})
        table.columns.push_back({QString::fromLatin1(head), 1});
    QStringList words;
    for (int word = 0; word < 400; ++word)
        words << QStringLiteral("word%1.").arg(word);
    table.rows.push_back({{{QStringLiteral("today")},
                           {words.join(QLatin1Char(' '))},
                           {QStringLiteral("rework")},
                           {QStringLiteral("Berta")}}});
    table.rows.push_back({{{QStringLiteral("tomorrow")},
                           {QStringLiteral("a rib")},
                           {QStringLiteral("assembly")},
                           {QStringLiteral("Berta")}}});
    const QStringList pages = printed(folder.path("table.pdf"), table);
    REQUIRE(pages.size() == 1);
    const QString text = pages.first().simplified();
    for (const int word : {0, 1, 200, 398, 399})
        CHECK(text.contains(QStringLiteral("word%1.").arg(word)));
    // It begins in its column, and its head stands above it.
    CHECK(text.count(QStringLiteral("word0.")) == 2);
    CHECK(text.count(QStringLiteral("word399.")) == 1);
    CHECK(text.count(QStringLiteral("What")) == 2);
    CHECK(text.indexOf(QStringLiteral("word399.")) < text.indexOf(QStringLiteral("tomorrow")));
}

TEST_CASE("A long text across the table is not unfolded a second time")
{
    QStringList missing;
    for (int line = 1; line <= 60; ++line)
        missing << QStringLiteral("Step %1. is not done").arg(line);
    print::Table table;
    table.columns = {{QStringLiteral("Closing"), 3},
                     {QStringLiteral("What was missing"), 2},
                     {QStringLiteral("Reason"), 5}};
    table.rows.push_back({{{QStringLiteral("Left wing")},
                           {missing.join(QLatin1Char('\n'))},
                           {QStringLiteral("in a hurry")}}});
    constexpr double width = print::points(480);
    const print::Table shown = print::unfolded(table, width);
    REQUIRE(shown.rows.size() == 3);
    CHECK(print::unfolded(shown, width).rows.size() == 3);
    CHECK(print::leastHeightOf(shown, width) == print::leastHeightOf(table, width));
}

TEST_CASE("A row that names others is said again on the page where they go on")
{
    const PrintedFolder folder;
    const auto groupOf = [](const char *name) {
        print::Table::Row group{{{QString::fromLatin1(name)}}};
        group.is_group = true;
        return group;
    };
    int goingOn = 0;
    for (int rows = 34; rows < 48; ++rows) {
        INFO(rows);
        print::Table table = tableOf(rows);
        table.rows.insert(table.rows.begin(), groupOf("Left wing"));
        table.rows.push_back(groupOf("Right wing"));
        for (int row = 0; row < 5; ++row)
            table.rows.push_back({{{QStringLiteral("below")}, {QStringLiteral("1 h 00")}}});
        const QStringList pages = printed(folder.path("table.pdf"), table);
        REQUIRE(pages.size() <= 2);
        CHECK_FALSE(pages.first().contains(QStringLiteral("continued")));
        if (pages.size() == 1)
            continue;
        const bool isLeftOver = pages.last().contains(QStringLiteral("Sum"));
        const bool isRightThere = pages.last().contains(QStringLiteral("below")) &&
                                  pages.first().contains(QStringLiteral("below"));
        CHECK(pages.last().contains(QStringLiteral("Left wing, continued")) == isLeftOver);
        CHECK(pages.last().contains(QStringLiteral("Right wing, continued")) == isRightThere);
        goingOn += isLeftOver || isRightThere ? 1 : 0;
    }
    CHECK(goingOn > 0);
}

TEST_CASE("A heading does not stand alone over a table without rows")
{
    const PrintedFolder folder;
    const auto place = folder.path("heading.pdf");
    int overTwoPages = 0;
    for (int above = 46; above < 56; ++above) {
        INFO(above);
        QFile file(QString::fromStdString(place.string()));
        REQUIRE(file.open(QIODevice::WriteOnly));
        const print::Wording words;
        {
            print::Pages pages(file, print::Paper::A4, {}, words, {}, {});
            for (int line = 0; line < above; ++line)
                pages.text(QStringLiteral("above"));
            pages.smallHeading(QStringLiteral("Heading"), 0);
            pages.text(QStringLiteral("Nothing is on record."));
        }
        file.close();
        const QStringList pages = PrintedFolder::pageTexts(place);
        CHECK(pages.last().contains(QStringLiteral("Heading")));
        CHECK(pages.last().contains(QStringLiteral("Nothing is on record.")));
        overTwoPages += pages.size() == 2 ? 1 : 0;
    }
    CHECK(overTwoPages > 0);
    CHECK(overTwoPages < 10);
}

TEST_CASE("Neither the first line of a text nor its last stands alone on a page")
{
    const PrintedFolder folder;
    const auto place = folder.path("text.pdf");
    for (int above = 44; above < 56; ++above) {
        INFO(above);
        QFile file(QString::fromStdString(place.string()));
        REQUIRE(file.open(QIODevice::WriteOnly));
        const print::Wording words;
        {
            print::Pages pages(file, print::Paper::A4, {}, words, {}, {});
            for (int line = 0; line < above; ++line)
                pages.text(QStringLiteral("above"));
            pages.text(QStringList(6, QStringLiteral("a line")).join(QLatin1Char('\n')));
        }
        file.close();
        int lines = 0;
        for (const QString &page : PrintedFolder::pageTexts(place)) {
            const int here = int(page.count(QStringLiteral("a line")));
            CHECK(here != 1);
            lines += here;
        }
        CHECK(lines == 6);
    }
}

TEST_CASE("No line of the contents stands alone on the page behind the others")
{
    const PrintedFolder folder;
    const print::Wording words;
    print::Outline outline;
    for (int chapter = 1; chapter <= 9; ++chapter)
        outline.headings.push_back({0, QStringLiteral("chapter %1.").arg(chapter), chapter});
    int overTwoPages = 0;
    int smaller = 0;
    for (int above = 30; above < 60; ++above) {
        INFO(above);
        const auto place = folder.path("contents.pdf");
        QFile file(QString::fromStdString(place.string()));
        REQUIRE(file.open(QIODevice::WriteOnly));
        double room = 0;
        {
            print::Pages pages(file, print::Paper::A4, {}, words, outline, {});
            for (int line = 0; line < above; ++line)
                pages.text(QStringLiteral("above"));
            room = pages.spaceLeft();
            print::drawContents(pages);
        }
        file.close();
        const QStringList pages = PrintedFolder::pageTexts(place);
        CHECK(pages.last().count(QStringLiteral("chapter")) >= 4);
        // Too little for nine lines of the usual size.
        if (room > print::points(150) && room < print::points(168)) {
            CHECK(pages.size() == 1);
            ++smaller;
        }
        overTwoPages += pages.size() == 2 && pages.first().contains(QStringLiteral("chapter 1."));
    }
    CHECK(overTwoPages > 0);
    CHECK(smaller > 0);
}

TEST_CASE("Ways through the parts that differ at their end alone are told apart in the contents")
{
    const PrintedFolder folder;
    const print::Wording words;
    const QString above =
        QStringList(8, QStringLiteral("assembly with a long name")).join(QStringLiteral(" › "));
    print::Outline outline;
    for (const char *part : {"first rib", "second rib"})
        outline.headings.push_back({1, above + QStringLiteral(" › ") + QLatin1String(part), 0});
    outline.headings.push_back(
        {1, QStringList(60, QStringLiteral("no way")).join(QLatin1Char(' ')), 0});
    const auto place = folder.path("contents.pdf");
    QFile file(QString::fromStdString(place.string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    {
        print::Pages pages(file, print::Paper::A4, {}, words, outline, {});
        print::drawContents(pages);
    }
    file.close();
    const QString text = PrintedFolder::text(place).simplified();
    CHECK(text.contains(QStringLiteral("first rib")));
    CHECK(text.contains(QStringLiteral("second rib")));
    CHECK(text.count(QChar(0x2026)) == 3);
}
