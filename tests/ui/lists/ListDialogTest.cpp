// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/lists/ListDialog.h"

#include "core/project/acts/PartActs.h"
#include "core/steps/StepOrder.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/ModelWatch.h"
#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/lists/ColumnChoice.h"
#include "ui/lists/ListRows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QPlainTextEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

namespace lastrivet::test {

namespace {

using Fate = exchange::CsvRow::Fate;

QString fateOf(const ui::ListDialog &dialog, int row)
{
    return dialog.rows().index(row, ui::ListRows::FateColumn).data().toString();
}

} // namespace

TEST_CASE("Parts pasted from a spreadsheet are shown row by row, then made in one change")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    ModelWatch watch(dialog.rows());
    dialog.setWithin(workshop.wing);
    dialog.setText(
        QStringLiteral("Code\tName\tParent\nLW-R1\tRib 1\t\n\nLW-R1A\tStiffener\tLW-R1\n"));
    CHECK(dialog.rows().countOf(Fate::Added) == 2);
    CHECK(fateOf(dialog, 1) == QStringLiteral("· blank"));
    CHECK(session->records()->components.size() == 4);
    dialog.show();
    dialog.take();
    CHECK(dialog.result() == QDialog::Accepted);
    const auto inside = acts::partsInside(*session->records(), workshop.wing);
    REQUIRE(inside.size() == 2);
    const auto rib = inside.back();
    CHECK(session->records()->find(rib)->code == "LW-R1");
    CHECK(acts::partsInside(*session->records(), rib).size() == 1);
    session->undo();
    CHECK(acts::partsInside(*session->records(), workshop.wing).size() == 1);
    watch.check();
}

TEST_CASE("A list that somebody typed in is dropped by the second cancelling, not the first")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setText(QStringLiteral("Code\tName\nLW-R1\tRib 1\n"));
    SECTION("what was only brought along goes at once")
    {
        dialog.show();
        dialog.reject();
        CHECK_FALSE(dialog.isVisible());
    }
    SECTION("what was typed stays once")
    {
        auto *text = dialog.findChild<QPlainTextEdit *>();
        REQUIRE(text);
        dialog.show();
        QTest::keyClicks(text, QStringLiteral("Spar"));
        REQUIRE_FALSE(dialog.close());
        CHECK(dialog.isVisible());
        CHECK(dialog.summary().startsWith(QStringLiteral("What was typed into the list")));
        QTest::keyClicks(text, QStringLiteral("s"));
        dialog.reject();
        CHECK(dialog.isVisible());
        dialog.reject();
        CHECK_FALSE(dialog.isVisible());
    }
}

TEST_CASE("One wrong row keeps the whole list out, and says what is wrong with it")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setText(
        QStringLiteral("name,code,kind\nRib 1,LW,part\nRib 2,LW-2,windmill\nRib 3,,part\n"));
    CHECK(dialog.rows().countOf(Fate::Wrong) == 2);
    CHECK(fateOf(dialog, 0) == QStringLiteral("× wrong"));
    CHECK(fateOf(dialog, 2) == QStringLiteral("+ new"));
    const QString why = dialog.rows().index(1, ui::ListRows::WhatColumn).data().toString();
    CHECK(why.contains(QStringLiteral("windmill")));
    dialog.take();
    CHECK(session->records()->components.size() == 4);
    CHECK(dialog.summary().contains(QStringLiteral("2 wrong")));
    const auto first = dialog.rows().firstOf(Fate::Wrong);
    CHECK(dialog.rows().sentenceOf(first).startsWith(QStringLiteral("Row 2: ")));
    CHECK(dialog.summary().contains(dialog.rows().sentenceOf(first)));
}

TEST_CASE("Steps without headings get their columns by hand and their part from where they go")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Step);
    dialog.setWithin(workshop.rudder);
    dialog.setText(QStringLiteral("Drill the spar\t2h15\t14.03.2026\nRivet the spar\t90\t\n"));
    // No heading is known, so the first row is a step.
    CHECK(dialog.summary().contains(QStringLiteral("No column fills “Title”")));
    dialog.columns().choose(0, QStringLiteral("title"));
    CHECK(dialog.rows().rowCount() == 2);
    CHECK(dialog.rows().index(0, ui::ListRows::RowColumn).data().toString() == QStringLiteral("1"));
    dialog.columns().choose(1, QStringLiteral("estimate_minutes"));
    dialog.columns().choose(2, QStringLiteral("done_on"));
    // Days with points are written in one order only.
    CHECK(dialog.findChildren<QComboBox *>().at(1)->currentIndex() == 1);
    CHECK(dialog.rows().countOf(Fate::Added) == 2);
    dialog.take();
    const auto order = steps::stepsOf(*session->records(), workshop.rudder);
    REQUIRE(order.size() == 2);
    const Step &drill = *session->records()->find(order.front());
    CHECK(drill.title == "Drill the spar");
    CHECK(drill.estimate_minutes == Minutes{135});
    CHECK(drill.done_on == Moment::parse("2026-03-14"));
}

TEST_CASE("The order of days is taken from the whole column, and asked for where it does not show")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::WorkSession);
    auto *days = dialog.findChildren<QComboBox *>().at(1);
    dialog.setText(QStringLiteral("Date,Part,Minutes\n1/2/2026,RU,30\n14/2/2026,RU,30\n"));
    CHECK(days->currentIndex() == 1);
    CHECK(dialog.rows().countOf(Fate::Added) == 2);
    dialog.setText(QStringLiteral("Date,Part,Minutes\n1/2/26,RU,30\n"));
    CHECK(days->currentIndex() == 0);
    CHECK(dialog.rows().countOf(Fate::Wrong) == 1);
    CHECK(dialog.summary().contains(QStringLiteral("choose above how days are written")));
    days->setCurrentIndex(2);
    dialog.take();
    const auto &entries = session->records()->work_sessions;
    CHECK(std::ranges::any_of(entries, [](const WorkSession &entry) {
        return entry.began == Moment::parse("2026-01-02") && entry.minutes == Minutes{30};
    }));
}

TEST_CASE("Packing lists and log entries come in by a file and by what people call their columns")
{
    Workshop workshop;
    const auto session = workshop.session();
    const TemporaryFolder folder;
    const QString name = ui::pathText(folder / "crate.csv");
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("\xEF\xBB\xBFP/N;Description;Qty\r\nP-35;Bolt;24\r\n");
    file.close();
    ui::ListDialog packing(*session);
    packing.setType(RecordType::PartLine);
    REQUIRE(packing.openFile(name));
    packing.take();
    REQUIRE(session->records()->part_lines.size() == 1);
    const PartLine &line = *session->records()->part_lines.begin();
    CHECK(line.part_number == "P-35");
    CHECK(line.name == "Bolt");
    CHECK(line.quantity == 24);

    const auto before = session->records()->work_sessions.size();
    ui::ListDialog log(*session);
    log.setType(RecordType::WorkSession);
    log.setText(QStringLiteral("Date,Part,Duration,What\n2026-03-01,RU,1:30,Skin cut\n"));
    log.take();
    CHECK(session->records()->work_sessions.size() == before + 1);
}

TEST_CASE("A currency that is none in force is told before the list is taken in, and afterwards")
{
    Workshop workshop;
    const auto session = workshop.session();
    QString said;
    QObject::connect(session.get(), &ui::Session::said, session.get(),
                     [&said](const QString &sentence) { said = sentence; });
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::PartLine);
    dialog.setText(QStringLiteral("name,quantity,unit_price,currency\nRivets,12,50,XYZ\n"));
    CHECK(dialog.rows().countOf(Fate::Added) == 1);
    CHECK(dialog.summary().contains(QStringLiteral("ISO 4217: XYZ")));
    dialog.take();
    CHECK(session->records()->part_lines.size() == 1);
    CHECK(said.contains(QStringLiteral("ISO 4217: XYZ")));
}

TEST_CASE("A list in UTF-8 with a bad byte is refused by its line, not read as another code")
{
    Workshop workshop;
    const auto session = workshop.session();
    const TemporaryFolder folder;
    const QString name = ui::pathText(folder / "parts.csv");
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("\xEF\xBB\xBF"
               "Code;Name\r\nSP-1;Nose rib\r\nSP-2;R\xFC"
               "ckwand\r\n");
    file.close();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Component);
    CHECK_FALSE(dialog.openFile(name));
    CHECK(dialog.summary() == QStringLiteral("parts.csv: line 3: The text is no UTF-8."));
    CHECK(dialog.findChild<QPlainTextEdit *>()->toPlainText().isEmpty());
}

TEST_CASE("A list of an older spreadsheet keeps its umlauts, accents and dashes")
{
    Workshop workshop;
    const auto session = workshop.session();
    const TemporaryFolder folder;
    const QString name = ui::pathText(folder / "teile.csv");
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("Code;Name\r\nSP-1;Fl\xFCgelnase \x96 au\xDF"
               "en\r\n");
    file.close();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Component);
    REQUIRE(dialog.openFile(name));
    dialog.take();
    const auto &parts = session->records()->components;
    const auto nose = std::ranges::find(parts, std::string("SP-1"), &Component::code);
    REQUIRE(nose != parts.end());
    CHECK(nose->name == "Flügelnase – außen");
}

TEST_CASE("The dialog for a list is shown whole, in light and in dark")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setWithin(workshop.wing);
    dialog.setText(
        QStringLiteral("Code\tName\tKind\nLW-R1\tRib 1\tpart\nLW-R2\tRib 2\twindmill\n"));
    lightAndDark(dialog, 940, 620, "list");
    CHECK(dialog.rows().countOf(Fate::Added) == 1);
    CHECK(dialog.rows().countOf(Fate::Wrong) == 1);
    CHECK(says(dialog, QStringLiteral("Row 3: “windmill” is none of")));
}

TEST_CASE("A list that is pasted over an opened file does not go by the file's name")
{
    Workshop workshop;
    const auto session = workshop.session();
    const TemporaryFolder folder;
    const QString name = ui::pathText(folder / "ribs.csv");
    QFile file(name);
    REQUIRE(file.open(QIODevice::WriteOnly));
    file.write("Code,Name\r\nLW-R1,Rib 1\r\nLW-R2,Rib 2\r\n");
    file.close();
    const bool isPasted = GENERATE(false, true);
    ui::ListDialog dialog(*session);
    REQUIRE(dialog.openFile(name));
    auto &text = *dialog.findChild<QPlainTextEdit *>();
    text.setPlainText(isPasted ? QStringLiteral("Code,Name\nLW-S1,Spar\nLW-S2,Rear spar\n")
                               : text.toPlainText() + QStringLiteral("LW-R3,Rib 3\n"));
    dialog.take();
    const auto label = session->project().undoLabel();
    REQUIRE(label);
    CHECK((label->find("ribs.csv") == std::string::npos) == isPasted);
}

} // namespace lastrivet::test
