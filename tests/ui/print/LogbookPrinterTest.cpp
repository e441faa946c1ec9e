// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/LogbookPrinter.h"

#include "tests/support/WingProject.h"
#include "tests/ui/print/PrintedFolder.h"

#include <catch2/catch.hpp>

using namespace lastrivet;
using namespace lastrivet::test;

namespace {

/// Entries of so many days, each with a note that says which.
Records logOf(int days)
{
    Records records = WingProject().records;
    const auto part = records.components.begin()->id;
    for (int day = 0; day < days; ++day) {
        WorkSession session;
        session.id = Id<WorkSession>{500'000 + day};
        session.began = Moment::parse("2024-01-01")->plusDays(day);
        session.minutes = Minutes{60 + day % 7};
        session.component_id = part;
        session.note = "Evening number " + std::to_string(day) + ", riveted";
        records.put(RecordType::WorkSession, &session);
    }
    return records;
}

packet::Logbook bookOf(const Records &records, packet::LogOrder order)
{
    return packet::logbookOf(records, WingProject().profile, {.order = order},
                             [](Id<WorkSession>) { return std::nullopt; });
}

QString printed(const PrintedFolder &folder, const packet::Logbook &log,
                const print::Choices &choices = {})
{
    const auto file = folder.path("log.pdf");
    REQUIRE(print::printLogbook(log, imprintOfTest(), folder.pictures(), choices, file));
    return PrintedFolder::text(file);
}

} // namespace

TEST_CASE("A printed log loses no entry, over many pages")
{
    const PrintedFolder folder;
    constexpr int days = 400;
    for (const auto order : {packet::LogOrder::ByDate, packet::LogOrder::ByPart}) {
        const QString text = printed(folder, bookOf(logOf(days), order));
        CHECK(text.count(QLatin1Char('\f')) > 10);
        for (int day = 0; day < days; ++day)
            CHECK(text.count(QStringLiteral("number %1,").arg(day)) == 1);
    }
}

TEST_CASE("Bookmarks of a printed log lead to its months")
{
    const PrintedFolder folder;
    printed(folder, bookOf(logOf(70), packet::LogOrder::ByDate));
    const auto run = PrintedFolder::run(
        QStringLiteral("qpdf"), {QStringLiteral("--json=2"), QStringLiteral("--json-key=outlines"),
                                 QString::fromStdString(folder.path("log.pdf").string())});
    REQUIRE(run.exit_code == 0);
    for (const char *title : {"Sums", "By month", "The log by date", "January 2024", "March 2024"})
        CHECK(run.output.contains(QString::fromUtf8(title)));
}

TEST_CASE("A printed log has one list of its contents")
{
    const PrintedFolder folder;
    const QString text = printed(folder, bookOf(logOf(3), packet::LogOrder::ByDate));
    CHECK(text.count(QStringLiteral("Contents")) == 1);
}

TEST_CASE("A log in another language writes its months in it")
{
    const PrintedFolder folder;
    print::Choices choices;
    choices.wording = print::Wording(QLocale(QLocale::French, QLocale::France));
    CHECK(printed(folder, bookOf(logOf(3), packet::LogOrder::ByDate), choices)
              .contains(QStringLiteral("janvier 2024")));
}

TEST_CASE(
    "A printed log says where an entry was worked on, and of which entries nobody knows the day")
{
    const PrintedFolder folder;
    Records records = logOf(3);
    WorkSession away = *records.find(Id<WorkSession>{500'001});
    away.place = "Hangar 4";
    records.put(RecordType::WorkSession, &away);
    const QString text = printed(folder, bookOf(records, packet::LogOrder::ByDate)).simplified();
    CHECK(text.contains(QStringLiteral("place: Hangar 4")));
    CHECK(text.contains(QStringLiteral("Of entries that were imported nobody knows")));
}
