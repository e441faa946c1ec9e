// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Unshown.h"

#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/LabelSheet.h"
#include "ui/print/Measures.h"
#include "ui/print/SquawkListPrinter.h"
#include "ui/print/TagSheet.h"
#include "ui/print/TextBlock.h"

#include <catch2/catch.hpp>

#include <string>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// For private use: no typeface has a picture of it.
const std::string nowhere = "\xF4\x8F\xBF\xB0";

} // namespace

TEST_CASE("Who prints is told which characters no typeface has, each once")
{
    const PrintedFolder folder;
    const WingProject project;
    auto list = squawkListOf(project);
    REQUIRE_FALSE(list.entries.empty());
    const auto pdf = folder.path("squawks.pdf");
    auto &title = list.entries.front().squawk.title;
    title = "Ζημιά, вмятина, żółć";
    const auto plain = print::printSquawkList(list, imprintOfTest(), {}, pdf);
    REQUIRE(plain);
    CHECK(plain->unshown.empty());
    title = nowhere + " in rib 3 " + nowhere;
    const auto boxes = print::printSquawkList(list, imprintOfTest(), {}, pdf);
    REQUIRE(boxes);
    CHECK(boxes->unshown == nowhere);
}

TEST_CASE("A paper with boxes for letters says so at the head of its first page")
{
    const PrintedFolder folder;
    const WingProject project;
    auto list = squawkListOf(project);
    REQUIRE_FALSE(list.entries.empty());
    const auto pdf = folder.path("squawks.pdf");
    const QString said = QStringLiteral("Boxes stand for characters that no typeface here has:");
    REQUIRE(print::printSquawkList(list, imprintOfTest(), {}, pdf));
    CHECK_FALSE(PrintedFolder::text(pdf).contains(said));
    list.entries.front().squawk.title = nowhere + " in rib 3 " + nowhere;
    REQUIRE(print::printSquawkList(list, imprintOfTest(), {}, pdf));
    const QStringList pages = PrintedFolder::pageTexts(pdf);
    CHECK(pages.first().trimmed().startsWith(said + QStringLiteral(" U+10FFF0\n")));
    CHECK(pages.join(QString()).count(said) == 1);
}

TEST_CASE("Who prints labels or tags is told of boxes too")
{
    const PrintedFolder folder;
    const auto pdf = folder.path("sheet.pdf");
    const packet::ShelfLabel label{{RecordType::MaterialLot, 7}, "25-1", "Sealant " + nowhere, {}};
    const auto labels = print::printLabels({{}, {label}, print::labelGrids(print::Paper::A4)[0], 0},
                                           imprintOfTest(), {}, pdf);
    REQUIRE(labels);
    CHECK(labels->unshown == nowhere);
    const packet::Tag tag{
        Id<Closing>{1},         "Left wing " + nowhere, "LW", readiness::State::Hold, {}, 0,
        imprintOfTest().made_on};
    const auto tags = print::printTags({{}, {tag}, false}, imprintOfTest(), {}, pdf);
    REQUIRE(tags);
    CHECK(tags->unshown == nowhere);
    CHECK(PrintedFolder::text(pdf).contains(
        QStringLiteral("Boxes stand for characters that no typeface here has: U+10FFF0")));
}

TEST_CASE("Of many letters that no typeface has the first are named")
{
    QString many;
    for (char32_t character = 0x10FFF0; character < 0x10FFF8; ++character)
        many += QString::fromUcs4(&character, 1);
    print::UnshownCharacters unshown;
    print::TextBlock(many, print::Size::Body, print::points(1000));
    CHECK(unshown.numbers() ==
          QStringLiteral("U+10FFF0, U+10FFF1, U+10FFF2, U+10FFF3, U+10FFF4, …"));
}

TEST_CASE("Only texts that are laid out while somebody listens count as unshown")
{
    const QString text = QString::fromStdString(nowhere);
    const auto layOut = [&] { print::TextBlock(text, print::Size::Body, print::points(100)); };
    layOut();
    print::UnshownCharacters outer;
    {
        print::UnshownCharacters inner;
        layOut();
        CHECK(inner.some() == nowhere);
    }
    CHECK(outer.some().empty());
    layOut();
    CHECK(outer.some() == nowhere);
}
