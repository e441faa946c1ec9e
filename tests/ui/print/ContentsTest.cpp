// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Contents.h"

#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Pages.h"

#include <catch2/catch.hpp>

#include <QFile>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// Sections with eight headings below each.
print::Outline outlineOf(int entries)
{
    print::Outline outline;
    for (int entry = 1; entry <= entries; ++entry)
        outline.headings.push_back(
            {entry % 9 == 1 ? 0 : 1, QStringLiteral("entry %1.").arg(entry), entry});
    return outline;
}

struct Drawn {
    QStringList pages;
    std::vector<print::Link> links;
    QRectF body;
};

/// The contents of a document, below so many lines.
Drawn drawn(const print::Outline &outline, int linesAbove)
{
    const PrintedFolder folder;
    const auto place = folder.path("contents.pdf");
    const print::Wording words;
    Drawn result;
    QFile file(QString::fromStdString(place.string()));
    REQUIRE(file.open(QIODevice::WriteOnly));
    {
        print::Pages pages(file, print::Paper::A4, {}, words, outline, {});
        for (int line = 0; line < linesAbove; ++line)
            pages.text(QStringLiteral("above"));
        print::drawContents(pages);
        result.links = pages.links();
        result.body = pages.body();
    }
    file.close();
    result.pages = PrintedFolder::pageTexts(place);
    return result;
}

bool isBehind(const print::Link &link, const print::Link &before)
{
    if (link.page != before.page)
        return link.page > before.page;
    return link.place.left() > before.place.left() || link.place.top() >= before.place.bottom() - 1;
}

} // namespace

TEST_CASE("Contents lose no line and keep their order, in one column or in two")
{
    for (const int entries : {13, 30, 61, 98, 113, 300}) {
        for (const int above : {0, 20, 40, 46}) {
            INFO(entries << " entries below " << above << " lines");
            const Drawn contents = drawn(outlineOf(entries), above);
            REQUIRE(contents.links.size() == std::size_t(entries));
            int astray = 0;
            for (std::size_t i = 0; i < contents.links.size(); ++i) {
                const print::Link &link = contents.links[i];
                const bool isInOrder = i == 0 || isBehind(link, contents.links[i - 1]);
                const bool isOnPage = link.place.bottom() < contents.body.bottom() + 1 &&
                                      link.place.right() < contents.body.right() + 1;
                astray += link.heading == i && isInOrder && isOnPage ? 0 : 1;
            }
            CHECK(astray == 0);
            CHECK(contents.pages.join(QString()).count(QStringLiteral("entry ")) == entries);
            CHECK(contents.pages.last().count(QStringLiteral("entry ")) >= 4);
        }
    }
}

TEST_CASE("The contents of a packet of thirty closings are a page, and no line stands on a third")
{
    CHECK(drawn(outlineOf(98), 0).pages.size() == 1);
    CHECK(drawn(outlineOf(98), 20).pages.size() == 2);
}

TEST_CASE("A section stands in the contents with the first line of what is below it")
{
    for (const int entries : {98, 300}) {
        const print::Outline outline = outlineOf(entries);
        const Drawn contents = drawn(outline, 0);
        REQUIRE(contents.links.size() == outline.headings.size());
        for (std::size_t i = 0; i + 1 < contents.links.size(); ++i) {
            if (outline.headings[i].level > 0 || outline.headings[i + 1].level == 0)
                continue;
            INFO(i);
            CHECK(contents.links[i].page == contents.links[i + 1].page);
            CHECK(contents.links[i].place.left() == contents.links[i + 1].place.left());
        }
    }
}
