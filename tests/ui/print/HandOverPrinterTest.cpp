// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HandOverPrinter.h"

#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

packet::HandOver bookOf(const Records &records, const Profile &profile, Moment asOf)
{
    return packet::handOver(records, profile, readiness::readiness(records, profile, asOf));
}

/// What must not be told, in every place where a record can keep it.
void addPrivateMatter(WingProject &project)
{
    Records &records = project.records;
    records.project.builder_address = "Privatelane 5";
    records.project.note = "Privatenote";
    Person builder = *records.find(project.builder);
    builder.contact = "berta@private.example";
    builder.note = "Privateperson";
    records.people.put(builder);
    records.expenses.put({.id = Id<Expense>{1},
                          .what = "Privatebuy",
                          .supplier = "Privateshop",
                          .amount = 7'654'321,
                          .currency = "CHF",
                          .note = "Privatebill"});
    records.part_lines.put({.id = Id<PartLine>{1},
                            .component_id = project.rib,
                            .name = "Rib blank",
                            .quantity = 1,
                            .unit_price = 8'765'432,
                            .currency = "CHF",
                            .note = "Privateprice"});
    Media receipt;
    receipt.id = Id<Media>{901};
    receipt.file = "photos/receipt.jpg";
    receipt.sha256 = std::string(64, 'a');
    receipt.taken_on = WingProject::at("2026-01-01");
    receipt.caption = "Privatereceipt";
    receipt.links = {{RecordType::Expense, 1}};
    records.media.put(receipt);
    receipt.id = Id<Media>{902};
    receipt.shows = {Shows::Receipt};
    receipt.links = {{RecordType::Component, project.rib.value()}};
    records.media.put(receipt);
    receipt.id = Id<Media>{903};
    receipt.shows = {};
    receipt.links = {{RecordType::PartLine, 1}};
    records.media.put(receipt);
}

} // namespace

TEST_CASE("The hand-over book holds the aircraft as built")
{
    const PrintedFolder folder;
    const WingProject project;
    const auto pdf = folder.path("book.pdf");
    REQUIRE(print::printHandOver(bookOf(project.records, project.profile, project.as_of),
                                 imprintOfTest(), folder.pictures(), {}, pdf));
    CHECK(PrintedFolder::isSound(pdf));
    const QString text = PrintedFolder::text(pdf);
    for (const char *word :
         {"HAND-OVER BOOK", "0042", "Contents", "LW-R3", "Tail skin", "Closings and signatures",
          "Thicker doubler", "Drilled out and replaced", "Rib 3 to spar", "Leak test",
          "Tank sealant", "W-9", "Hans Helper", "Rib 3 as found", "15 by the clock", "Cautions"}) {
        INFO(word);
        CHECK(text.contains(QString::fromUtf8(word)));
    }
}

TEST_CASE("The hand-over book tells how the aircraft was weighed, and says so where it was not")
{
    const PrintedFolder folder;
    WingProject project;
    const auto pdf = folder.path("book.pdf");
    const auto textOfBook = [&] {
        REQUIRE(print::printHandOver(bookOf(project.records, project.profile, project.as_of),
                                     imprintOfTest(), folder.pictures(), {}, pdf));
        return PrintedFolder::text(pdf);
    };
    CHECK_FALSE(textOfBook().contains(QLatin1String("Empty weight")));
    CHECK(textOfBook().contains(QLatin1String("weighings")));
    Weighing weighing;
    weighing.id = Id<Weighing>{1};
    weighing.weighed_on = WingProject::at("2026-01-05");
    weighing.datum = "Leading edge of the wing";
    weighing.scale_readings = {
        {"left", 150, 0, 1800, {}}, {"right", 152, 2, 1800, {}}, {"tail", 40, 0, 5600, {}}};
    project.records.weighings.put(weighing);
    const QString text = textOfBook();
    for (const char *words : {"Weight and balance", "Leading edge of the wing",
                              "Empty weight and centre of gravity", "340.00", "2247.06"}) {
        INFO(words);
        CHECK(text.contains(QString::fromUtf8(words)));
    }
    CHECK_FALSE(text.contains(QLatin1String("weighings")));
}

TEST_CASE("The hand-over book tells no cost, shows no receipt, and says not how people are reached")
{
    const PrintedFolder folder;
    WingProject project;
    addPrivateMatter(project);
    const auto pdf = folder.path("book.pdf");
    const auto printed =
        print::printHandOver(bookOf(project.records, project.profile, project.as_of),
                             imprintOfTest(), folder.pictures(), {}, pdf);
    REQUIRE(printed);
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("Berta Builder")));
    for (const char *word : {"Private", "private.example", "7654321", "76543", "87654", "CHF"}) {
        INFO(word);
        CHECK_FALSE(text.contains(QString::fromUtf8(word), Qt::CaseInsensitive));
    }
    const WingProject without;
    const auto plain =
        print::printHandOver(bookOf(without.records, without.profile, without.as_of),
                             imprintOfTest(), folder.pictures(), {}, folder.path("plain.pdf"));
    CHECK(printed->pictures == plain->pictures);
    CHECK(plain->pictures > 0);
}

TEST_CASE("The cautions never stand alone behind the photographs of a hand-over book")
{
    const PrintedFolder folder;
    const WingProject project;
    auto book = bookOf(project.records, project.profile, project.as_of);
    REQUIRE_FALSE(book.whole.photos.empty());
    auto photo = book.whole.photos.front();
    photo.caption = "As found";
    book.whole.videos.clear();
    const auto pdf = folder.path("book.pdf");
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        for (std::size_t count = 1; count <= 4; ++count) {
            INFO(count);
            book.whole.photos.assign(count, photo);
            REQUIRE(print::printHandOver(book, imprintOfTest(), folder.pictures(),
                                         {.paper = paper, .wording = {}}, pdf));
            const QStringList pages = PrintedFolder::pageTexts(pdf);
            CHECK(pages.last().contains(QLatin1String("Cautions")));
            CHECK(pages.last().contains(QLatin1String("As found")));
        }
    }
}

TEST_CASE("A project without records gives a book that says so")
{
    const PrintedFolder folder;
    const WingProject wing;
    Records records;
    records.project.name = "Begun today";
    const auto pdf = folder.path("book.pdf");
    const auto printed = print::printHandOver(bookOf(records, wing.profile, wing.as_of),
                                              imprintOfTest(), folder.pictures(), {}, pdf);
    REQUIRE(printed);
    CHECK(printed->pages <= 2);
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("Begun today")));
    CHECK(text.contains(QLatin1String("No closing is on record.")));
    CHECK(text.contains(QLatin1String("Nothing on record of")));
}

TEST_CASE("Two hundred parts fill several pages, each with the head of the table")
{
    const PrintedFolder folder;
    const WingProject wing;
    Records records;
    for (int i = 1; i <= 200; ++i)
        records.components.put({.id = Id<Component>{i},
                                .parent_id = Id<Component>{i % 10 == 1 ? 0 : i - (i - 1) % 10},
                                .code = "P" + std::to_string(i),
                                .name = "Part of the aircraft",
                                .part_number = "N-" + std::to_string(i)});
    const auto pdf = folder.path("book.pdf");
    REQUIRE(print::printHandOver(bookOf(records, wing.profile, wing.as_of), imprintOfTest(),
                                 folder.pictures(), {}, pdf));
    int pages = 0;
    for (const QString &page : PrintedFolder::pageTexts(pdf))
        pages += page.contains(QLatin1String("Part number")) ? 1 : 0;
    CHECK(pages >= 4);
    const QString text = PrintedFolder::text(pdf);
    CHECK(text.contains(QLatin1String("P1 ")));
    CHECK(text.contains(QLatin1String("P200 ")));
}

TEST_CASE("Each part lies within the closings that reach it, sub-parts too, with their state")
{
    WingProject project;
    project.records.components.put(
        {.id = Id<Component>{9}, .parent_id = project.tank, .code = "LW-TF", .name = "Filler"});
    const auto book = bookOf(project.records, project.profile, project.as_of);
    const auto filler = std::find_if(book.parts.begin(), book.parts.end(),
                                     [](const auto &part) { return part.code == "LW-TF"; });
    REQUIRE(filler != book.parts.end());
    REQUIRE(filler->lies_within.size() == 2);
    CHECK(filler->lies_within[0].closing == "Last baffle of the left tank");
    CHECK(filler->lies_within[0].state == readiness::State::ClosedEarly);
    CHECK(filler->lies_within[1].closing == "Upper skin of the left wing");
    CHECK(filler->lies_within[1].state == readiness::State::Hold);
    const PrintedFolder folder;
    const auto pdf = folder.path("book.pdf");
    REQUIRE(print::printHandOver(book, imprintOfTest(), folder.pictures(), {}, pdf));
    CHECK(PrintedFolder::text(pdf).contains(QLatin1String("Lies within")));
}
