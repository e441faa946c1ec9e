// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketPrinter.h"

#include "core/base/Error.h"
#include "core/base/Sha256.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

#include <QCoreApplication>
#include <QFile>
#include <QHashFunctions>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <fstream>
#include <set>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

QString named(const std::filesystem::path &file)
{
    return QString::fromStdString(file.string());
}

QByteArray bytesOf(const std::filesystem::path &file)
{
    QFile stream(named(file));
    REQUIRE(stream.open(QIODevice::ReadOnly));
    return stream.readAll();
}

/// What the outside reader qpdf knows of the document.
QJsonObject qpdfJson(const std::filesystem::path &pdf)
{
    const auto run = PrintedFolder::run(
        QStringLiteral("qpdf"), {QStringLiteral("--json=2"), QStringLiteral("--json-key=pages"),
                                 QStringLiteral("--json-key=outlines"), named(pdf)});
    REQUIRE(run.exit_code == 0);
    return QJsonDocument::fromJson(run.output.toUtf8()).object();
}

QStringList outlineTitles(const QJsonObject &json)
{
    QStringList titles;
    for (const QJsonValue &entry : json[QLatin1String("outlines")].toArray()) {
        const QString title = entry.toObject()[QLatin1String("title")].toString();
        titles << title;
    }
    return titles;
}

std::vector<packet::Photo> photos(int count)
{
    std::vector<packet::Photo> photos;
    for (int number = 1; number <= count; ++number) {
        packet::Photo photo;
        photo.id = Id<Media>{number};
        photo.number = number;
        photo.taken_on = Moment::parse("2026-02-11T09:30");
        photo.part = "LW-R3 Rib 3";
        photo.caption = "Picture number " + std::to_string(number);
        photos.push_back(photo);
    }
    return photos;
}

std::size_t filesIn(const std::filesystem::path &folder)
{
    return std::size_t(std::distance(std::filesystem::directory_iterator(folder), {}));
}

} // namespace

TEST_CASE("A printed packet is sound to an outside reader")
{
    const PrintedFolder folder;
    const std::filesystem::path pdf = folder.print(wingPacket());
    const auto check =
        PrintedFolder::run(QStringLiteral("qpdf"), {QStringLiteral("--check"), named(pdf)});
    INFO(check.output.toStdString());
    CHECK(check.exit_code == 0);
    CHECK(check.output.contains(QLatin1String("No syntax or stream encoding errors found")));
}

TEST_CASE("The sections of a printed packet are in the inspector's order")
{
    const PrintedFolder folder;
    const QString text = PrintedFolder::text(folder.print(wingPacket()));
    qsizetype from = text.indexOf(QLatin1String("Contents"));
    REQUIRE(from > 0);
    // The contents name them first; the second time they stand over their pages.
    from = text.indexOf(QLatin1String("Cautions"), from);
    for (const char *title : {"Readiness",
                              "Photographs of the open structure",
                              "Rib 3 as found",
                              "Squawks",
                              "Drilled out and replaced",
                              "Deviations",
                              "Thicker doubler",
                              "Fasteners and torque",
                              "Rib 3 to spar",
                              "Measurements",
                              "Leak test",
                              "Materials and lots",
                              "Tank sealant",
                              "Tool calibration",
                              "W-9",
                              "Work log",
                              "Hans Helper",
                              "The inspector's list",
                              "Tools are counted",
                              "The sheet to sign",
                              "own report form governs",
                              "Cautions",
                              "A caution of the profile."}) {
        INFO(title);
        const qsizetype found = text.indexOf(QString::fromUtf8(title), from);
        CHECK(found > from);
        if (found > 0)
            from = found;
    }
}

TEST_CASE("Every page has its number, the date and the journal hash; the first has it in full")
{
    const PrintedFolder folder;
    const std::filesystem::path pdf = folder.print(wingPacket());
    const int pages = int(qpdfJson(pdf)[QLatin1String("pages")].toArray().size());
    REQUIRE(pages > 6);
    const QStringList texts = PrintedFolder::text(pdf).split(QLatin1Char('\f'));
    REQUIRE(texts.size() >= pages);
    for (int page = 0; page < pages; ++page) {
        INFO(page);
        CHECK(texts[page].contains(QStringLiteral("page %1 of %2").arg(page + 1).arg(pages)));
        CHECK(texts[page].contains(QLatin1String("14 Mar 2026 15:20")));
        CHECK(texts[page].contains(QLatin1String("0123456789abcdef")));
        CHECK(texts[page].contains(QLatin1String("X-TEST")));
        CHECK(texts[page].contains(QString::fromStdString(imprintOfTest().journal_hash)) ==
              (page == 0));
    }
}

TEST_CASE("Bookmarks lead to the sections, on the pages that the contents name")
{
    const PrintedFolder folder;
    const std::filesystem::path pdf = folder.print(wingPacket());
    const QJsonObject json = qpdfJson(pdf);
    const QStringList titles = outlineTitles(json);
    CHECK(titles.first() == QLatin1String("Readiness"));
    CHECK(titles.last() == QLatin1String("Cautions"));
    const QStringList texts = PrintedFolder::text(pdf).split(QLatin1Char('\f'));
    for (const QJsonValue &entry : json[QLatin1String("outlines")].toArray()) {
        const QString title = entry[QLatin1String("title")].toString();
        const int page = entry[QLatin1String("destpageposfrom1")].toInt();
        INFO(title.toStdString());
        REQUIRE(page > 0);
        CHECK(texts[page - 1].contains(title));
    }
}

TEST_CASE("The photographs in a printed packet are byte for byte their copies")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.photos = photos(9);
    const std::filesystem::path pdf = folder.print(packet);
    std::filesystem::create_directory(folder.path("out"));
    REQUIRE(PrintedFolder::run(QStringLiteral("pdfimages"),
                               {QStringLiteral("-j"), named(pdf), named(folder.path("out/p"))})
                .exit_code == 0);
    std::multiset<std::string> found;
    for (const auto &file : std::filesystem::directory_iterator(folder.path("out")))
        found.insert(PrintedFolder::hashOf(file.path()));
    std::multiset<std::string> copies;
    for (const packet::Photo &photo : packet.photos)
        copies.insert(folder.picture(int(photo.id.value())).sha256);
    CHECK(found == copies);
}

TEST_CASE("Printing the same packet twice gives the same bytes")
{
    const PrintedFolder folder;
    const packet::Packet packet = wingPacket();
    CHECK(bytesOf(folder.print(packet, {}, "first.pdf")) ==
          bytesOf(folder.print(packet, {}, "second.pdf")));
}

TEST_CASE("Printing does not hang on the order of Qt's hash tables")
{
    const PrintedFolder folder;
    const packet::Packet packet = wingPacket();
    const QByteArray first = bytesOf(folder.print(packet));
    for (int run = 0; run < 8; ++run) {
        QHashSeed::resetRandomGlobalSeed();
        CHECK(bytesOf(folder.print(packet)) == first);
    }
}

TEST_CASE("Prints where the environment says", "[.in-another-process]")
{
    const PrintedFolder folder;
    const QString target = qEnvironmentVariable("LASTRIVET_TEST_PRINT");
    REQUIRE(QFile::copy(named(folder.print(wingPacket())), target));
}

TEST_CASE("Every run of the program gives the same packet the same bytes")
{
    const PrintedFolder folder;
    const QByteArray here = bytesOf(folder.print(wingPacket()));
    for (int run = 0; run < 4; ++run) {
        const std::filesystem::path there = folder.path("run-" + std::to_string(run) + ".pdf");
        qputenv("LASTRIVET_TEST_PRINT", named(there).toUtf8());
        REQUIRE(PrintedFolder::run(QCoreApplication::applicationFilePath(),
                                   {QStringLiteral("[.in-another-process]")})
                    .exit_code == 0);
        CHECK(bytesOf(there) == here);
    }
}

TEST_CASE("Letter paper is as wide as Letter")
{
    const PrintedFolder folder;
    const auto info = PrintedFolder::run(
        QStringLiteral("pdfinfo"),
        {named(folder.print(wingPacket(), {.paper = print::Paper::Letter, .wording = {}}))});
    CHECK(info.output.contains(QLatin1String("612 x 792 pts (letter)")));
    CHECK(info.output.contains(QLatin1String("Inspection packet: Upper skin of the left wing")));
    CHECK(info.output.contains(QLatin1String("Berta Builder")));
}

TEST_CASE("A photograph that cannot be had leaves a note that says why")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.photos = photos(2);
    const print::Pictures pictures =
        [&](const packet::Photo &photo) -> Result<evidence::PictureCopy, Message> {
        if (photo.number == 1)
            return Message{"{0} is not there.", {"lost.jpg"}};
        std::ofstream(folder.path("broken.jpg")) << "no picture";
        return evidence::PictureCopy{folder.path("broken.jpg"), 400, 300, {}};
    };
    const auto printed =
        print::printPacket(packet, imprintOfTest(), pictures, {}, folder.path("packet.pdf"));
    REQUIRE(printed);
    CHECK(printed->missing_pictures == 2);
    const QString text = PrintedFolder::text(folder.path("packet.pdf"));
    CHECK(text.count(QLatin1String("could not be printed")) == 2);
    // A file is called as it is, also at the beginning of a sentence.
    CHECK(text.contains(QLatin1String("lost.jpg is not there")));
    CHECK(text.contains(QLatin1String("Its copy for printing is damaged")));
    CHECK(text.contains(QLatin1String("Picture number 2")));
}

TEST_CASE("A cancelled printing leaves no file, and what was there before")
{
    const PrintedFolder folder;
    std::ofstream(folder.path("packet.pdf")) << "older";
    for (const int stopAt : {0, 30, 70, 99}) {
        INFO(stopAt);
        const auto printed = print::printPacket(wingPacket(), imprintOfTest(), folder.pictures(),
                                                {}, folder.path("packet.pdf"),
                                                [stopAt](int percent) { return percent < stopAt; });
        CHECK_FALSE(printed);
        CHECK(bytesOf(folder.path("packet.pdf")) == "older");
    }
    for (const auto &file : std::filesystem::directory_iterator(folder.path("")))
        CHECK_FALSE(file.path().filename().string().starts_with(".tmp-"));
}

TEST_CASE("Progress runs from the beginning to a hundred and never back")
{
    const PrintedFolder folder;
    std::vector<int> told;
    REQUIRE(print::printPacket(wingPacket(), imprintOfTest(), folder.pictures(), {},
                               folder.path("packet.pdf"), [&](int percent) {
                                   told.push_back(percent);
                                   return true;
                               }));
    CHECK(std::is_sorted(told.begin(), told.end()));
    CHECK(told.front() == 0);
    CHECK(told.back() == 100);
}

TEST_CASE("A folder that is not there gives one clear sentence and no file")
{
    const PrintedFolder folder;
    CHECK_THROWS_WITH(print::printPacket(wingPacket(), imprintOfTest(), folder.pictures(), {},
                                         folder.path("nowhere/packet.pdf")),
                      Catch::Contains("was not written: there is no such folder"));
    CHECK(filesIn(folder.path("")) <= wingPacket().photos.size());
}

TEST_CASE("Sixty photographs are two to a page, upright ones two to a row")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    const int without =
        int(qpdfJson(folder.print(packet))[QLatin1String("pages")].toArray().size());
    packet.photos = photos(60);
    const int wide = int(qpdfJson(folder.print(packet))[QLatin1String("pages")].toArray().size());
    CHECK(wide - without >= 28);
    CHECK(wide - without <= 32);
}

TEST_CASE("A row that is taller than a page is continued, and loses no word")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    std::string detail;
    for (int word = 0; word < 1500; ++word)
        detail += "word" + std::to_string(word) + " ";
    packet.squawks[0].detail = detail;
    const QString text = PrintedFolder::text(folder.print(packet));
    for (const int word : {0, 1, 250, 500, 750, 1000, 1250, 1498, 1499}) {
        INFO(word);
        CHECK(text.contains(QStringLiteral("word%1").arg(word)));
    }
}

TEST_CASE("What is to be signed names its closing and aircraft, and stays on one page")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    REQUIRE(packet.sheets.size() == 1);
    packet::SheetToSign &sheet = packet.sheets[0];
    const auto open = std::ranges::find(sheet.hold_points, HoldPointKind::PreCover,
                                        &packet::Standing::HoldPointLine::kind);
    REQUIRE(open != sheet.hold_points.end());
    sheet.hold_points = {*open, *open, *open};
    packet.sheets.push_back(sheet);
    packet.sheets[0].title = "First of two covers";
    packet.sheets[1].title = "Second of two covers";
    for (const print::Paper paper : {print::Paper::A4, print::Paper::Letter}) {
        QStringList signedOn;
        for (const QString &page :
             PrintedFolder::pageTexts(folder.print(packet, {.paper = paper, .wording = {}})))
            if (page.contains(QLatin1String("Builder, name")))
                signedOn << page;
        REQUIRE(signedOn.size() == 2);
        for (int i = 0; i < 2; ++i) {
            CHECK(signedOn[i].count(QLatin1String("Builder, name")) == 3);
            CHECK(signedOn[i].count(QLatin1String("Serial number 0042")) == 3);
            CHECK(signedOn[i].count(QString::fromStdString(packet.sheets[i].title)) >= 3);
        }
    }
}

TEST_CASE("Lines for deficiencies give way so that a sheet to sign is one page")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet::SheetToSign &sheet = packet.sheets[0];
    const auto open = std::ranges::find(sheet.hold_points, HoldPointKind::PreCover,
                                        &packet::Standing::HoldPointLine::kind);
    REQUIRE(open != sheet.hold_points.end());
    sheet.hold_points = {*open, *open};
    sheet.deficiencies.clear();
    int sheets = 0;
    for (const QString &page : PrintedFolder::pageTexts(folder.print(packet)))
        if (page.contains(QLatin1String("Builder, name"))) {
            ++sheets;
            CHECK(page.contains(QLatin1String("Deficiencies")));
            CHECK(page.count(QLatin1String("Builder, name")) == 2);
        }
    CHECK(sheets == 1);
}

TEST_CASE("The running head has room for a long title to its last word")
{
    const PrintedFolder folder;
    packet::Packet packet = wingPacket();
    packet.title = {"Inspection packet: upper skin of the left wing, seen on 12 Feb 2031", {}};
    const QStringList pages = PrintedFolder::pageTexts(folder.print(packet));
    REQUIRE(pages.size() > 1);
    CHECK(pages[1].contains(QLatin1String("seen on 12 Feb 2031")));
}

TEST_CASE("A language of its own writes dates and sentences")
{
    const PrintedFolder folder;
    print::Choices choices;
    choices.wording = print::Wording(QLocale(QLocale::German), [](std::string_view pattern) {
        return pattern == "page {0} of {1}" ? QStringLiteral("Seite {0} von {1}") : QString();
    });
    const QString text = PrintedFolder::text(folder.print(wingPacket(), choices));
    CHECK(text.contains(QLatin1String("Seite 2 von")));
    CHECK(text.contains(QString::fromUtf8("14. März 2026")));
    CHECK(text.contains(QLatin1String("6,5")));
}
