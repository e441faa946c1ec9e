// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/TagSheet.h"

#include "core/base/Error.h"
#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

print::TagSheet sheetOf(const WingProject &project, const IdSet<Closing> &closings)
{
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    return {packet::aircraftOf(project.records, project.profile),
            packet::tags(project.records, answer, closings), true};
}

} // namespace

TEST_CASE("A tie-on tag says that, why and since when a closing must stay open")
{
    const PrintedFolder folder;
    const WingProject project;
    const print::TagSheet sheet = sheetOf(project, {project.wingSkin});
    REQUIRE(sheet.tags.size() == 1);
    REQUIRE_FALSE(sheet.tags[0].waits_for.empty());
    const auto pdf = folder.path("tags.pdf");
    REQUIRE(print::printTags(sheet, imprintOfTest(), {}, pdf));
    CHECK(PrintedFolder::isSound(pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("DO NOT CLOSE")));
    CHECK(text.contains(QLatin1String("Upper skin of the left wing")));
    CHECK(text.contains(QLatin1String("waits for:")));
    const QString reason = print::Wording().sentence(sheet.tags[0].waits_for[0]);
    CHECK(text.contains(reason.left(20)));
    CHECK(text.contains(QLatin1String("14 Mar 2026")));
    CHECK(text.contains(QLatin1String("journal 0123456789abcdef")));
    CHECK(folder.codesOn(pdf, 1) == QStringList{QStringLiteral("lastrivet:closing:1")});
}

TEST_CASE("A long title stands whole on its tag, and one that is too long shows that it was cut")
{
    const PrintedFolder folder;
    const WingProject project;
    print::TagSheet sheet = sheetOf(project, {project.wingSkin});
    packet::Tag tag = sheet.tags[0];
    tag.title = "Finished, before the final inspection and first flight";
    sheet.tags = {tag};
    const auto pdf = folder.path("tags.pdf");
    REQUIRE(print::printTags(sheet, imprintOfTest(), {}, pdf));
    const QString whole = PrintedFolder::text(pdf).simplified();
    CHECK(whole.contains(QLatin1String("flight")));
    CHECK_FALSE(whole.contains(QStringLiteral("flight…")));
    tag.title = std::string(300, 'W');
    sheet.tags = {tag};
    REQUIRE(print::printTags(sheet, imprintOfTest(), {}, pdf));
    CHECK(PrintedFolder::text(pdf).contains(QStringLiteral("W…")));
}

TEST_CASE("A reason for which a line is left is named on its tag, though cut, and not only counted")
{
    const PrintedFolder folder;
    const WingProject project;
    print::TagSheet sheet = sheetOf(project, {project.wingSkin});
    REQUIRE(sheet.tags.size() == 1);
    packet::Tag &tag = sheet.tags[0];
    tag.waits_for.assign(5, Message{"a reason that is so long that it takes two lines of the tag, "
                                    "and would take a third one if it were allowed to do so",
                                    {}});
    tag.waits_for[0] = {"a short one", {}};
    const auto pdf = folder.path("tags.pdf");
    REQUIRE(print::printTags(sheet, imprintOfTest(), {}, pdf));
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("A short one")));
    CHECK(text.count(QLatin1String("A reason that is so long")) == 1);
    CHECK(text.contains(QLatin1String("and 3 more on record")));
}

TEST_CASE("What is closed, and what nothing stands against, gets no tag")
{
    const WingProject project;
    const print::TagSheet sheet = sheetOf(project, {project.tankBaffle, project.tailSkin});
    CHECK(sheet.tags.empty());
    const PrintedFolder folder;
    CHECK_THROWS_AS(print::printTags(sheet, imprintOfTest(), {}, folder.path("tags.pdf")), Fault);
    CHECK_FALSE(std::filesystem::exists(folder.path("tags.pdf")));
}

TEST_CASE("Many tags with many reasons stay on their four places a page, on either paper")
{
    const PrintedFolder folder;
    const WingProject project;
    print::TagSheet sheet = sheetOf(project, {project.wingSkin});
    packet::Tag tag = sheet.tags[0];
    tag.title = std::string(90, 'W');
    tag.waits_for.assign(30, Message{"a reason that is so long that it takes two lines of the tag, "
                                     "and would take a third one if it were allowed to do so",
                                     {}});
    sheet.tags.assign(9, tag);
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        const auto pdf = folder.path("tags.pdf");
        const auto printed = print::printTags(sheet, imprintOfTest(), {paper, {}}, pdf);
        REQUIRE(printed);
        CHECK(printed->pages == 3);
        const QStringList pages = PrintedFolder::pageTexts(pdf);
        CHECK(pages[0].count(QLatin1String("DO NOT CLOSE")) == 4);
        CHECK(pages[2].count(QLatin1String("DO NOT CLOSE")) == 1);
        CHECK(pages[0].count(QLatin1String("more on record")) == 4);
    }
}
