// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SquawkListPrinter.h"

#include "core/packet/SquawkFilterWords.h"
#include "core/readiness/Readiness.h"
#include "core/readiness/SquawkOrder.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"
#include "ui/print/Language.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

TEST_CASE("A filtered list of squawks says what it shows")
{
    const PrintedFolder folder;
    const WingProject project;
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto textOf = [&](const readiness::SquawkFilter &filter,
                            const print::Choices &choices = {}) {
        const auto list =
            packet::squawkList(project.records, project.profile, answer,
                               readiness::squawkOrder(project.records, answer, project.as_of),
                               packet::inWords(filter, project.records));
        const auto pdf = folder.path("squawks.pdf");
        REQUIRE(print::printSquawkList(list, imprintOfTest(), choices, pdf));
        return PrintedFolder::text(pdf).simplified();
    };
    const QString outstanding = textOf({.severity = Severity::Airworthiness, .text = "rivet"});
    CHECK(outstanding.contains(
        QStringLiteral("Shown: outstanding; airworthiness; with the words “rivet”.")));
    CHECK(outstanding.contains(QLatin1String("Rivet set too deep in rib 3")));
    CHECK(textOf({.standing = readiness::SquawkFilter::Standing::All})
              .contains(QLatin1String("Nothing is left out.")));
    const print::Choices german{print::Paper::A4,
                                print::wordingIn(print::languageFor(QLocale::German))};
    CHECK(textOf({.severity = Severity::Airworthiness}, german)
              .contains(QStringLiteral(": unerledigt; Lufttüchtigkeit.")));
}

TEST_CASE("A squawk says on paper in words how grave it is")
{
    const PrintedFolder folder;
    const WingProject project;
    auto list = squawkListOf(project);
    REQUIRE_FALSE(list.entries.empty());
    list.entries.resize(1);
    packet::SquawkEntry &squawk = list.entries.front().squawk;
    squawk.severity = Severity::Airworthiness;
    squawk.part = "LW";
    const auto pdf = folder.path("squawks.pdf");
    REQUIRE(print::printSquawkList(list, imprintOfTest(), {}, pdf));
    CHECK(PrintedFolder::text(pdf).contains(QStringLiteral("Airworthiness · LW")));
    squawk.severity = Severity::Cosmetic;
    squawk.part.clear();
    REQUIRE(print::printSquawkList(list, imprintOfTest(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("Cosmetic")));
    CHECK_FALSE(text.contains(QStringLiteral("Cosmetic ·")));
}

TEST_CASE("Cautions never stand alone behind a list of squawks")
{
    const PrintedFolder folder;
    const WingProject project;
    auto list = squawkListOf(project);
    REQUIRE_FALSE(list.entries.empty());
    auto entry = list.entries.front();
    entry.squawk.title = "Scratch";
    const auto pdf = folder.path("squawks.pdf");
    int overTwoPages = 0;
    for (std::size_t count = 6; count < 18; ++count) {
        INFO(count);
        list.entries.assign(count, entry);
        REQUIRE(print::printSquawkList(list, imprintOfTest(), {}, pdf));
        const QStringList pages = PrintedFolder::pageTexts(pdf);
        CHECK(pages.last().contains(QStringLiteral("Cautions")));
        CHECK(pages.last().contains(QStringLiteral("Scratch")));
        overTwoPages += pages.size() == 2 ? 1 : 0;
    }
    CHECK(overTwoPages > 0);
}
