// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/CsvImport.h"
#include "core/steps/StepOrder.h"
#include "tests/ui/support/Workshop.h"
#include "ui/lists/ColumnChoice.h"
#include "ui/lists/ListDialog.h"
#include "ui/lists/ListRows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QPlainTextEdit>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>

namespace lastrivet::test {

TEST_CASE("Columns that were chosen stay while the list is mended by hand")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Step);
    dialog.setWithin(workshop.rudder);
    dialog.setText(QStringLiteral("Drill the spar\t2h15\nRivet the spar\t90\n"));
    dialog.columns().choose(0, QStringLiteral("title"));
    dialog.columns().choose(1, QStringLiteral("estimate_minutes"));
    auto &text = *dialog.findChild<QPlainTextEdit *>();
    text.setPlainText(text.toPlainText() + QStringLiteral("Prime the spar\t30\n"));
    dialog.take();
    CHECK(steps::stepsOf(*session->records(), workshop.rudder).size() == 3);
}

TEST_CASE("Enter in a field takes no list in, and Tab leads from the columns to what they fill")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setText(QStringLiteral("Code\tName\nLW-R1\tRib 1\n"));
    dialog.show();
    const auto before = session->records()->components.size();
    for (auto *box : dialog.findChildren<QComboBox *>())
        QTest::keyClick(box, Qt::Key_Return);
    CHECK(dialog.isVisible());
    CHECK(session->records()->components.size() == before);
    const QWidget *next = dialog.columns().nextInFocusChain();
    while (next != &dialog.columns() && !(next->focusPolicy() & Qt::TabFocus))
        next = next->nextInFocusChain();
    CHECK(next->accessibleName() == QStringLiteral("What column Code fills"));
}

TEST_CASE("Columns that do not come in are told before the list is taken in")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::WorkSession);
    dialog.setText(QStringLiteral(
        "Date,Duration,Weather,,Blank,Remarks\n2026-03-01,1:30,rain,loose,,Skin cut\n"));
    CHECK(dialog.summary().startsWith(QStringLiteral("1 new")));
    CHECK(dialog.summary().endsWith(QStringLiteral("Left out: Weather, Column 4.")));
    dialog.columns().choose(2, QStringLiteral("note"));
    CHECK(dialog.summary().contains(QStringLiteral("Left out: Column 4.")));
    CHECK(dialog.summary().endsWith(
        QStringLiteral("Left out, as a column before it fills the same: Remarks.")));
    dialog.columns().choose(2, QString());
    dialog.setText(QStringLiteral("Date,Duration\n2026-03-01,1:30\n"));
    CHECK_FALSE(dialog.summary().contains(QStringLiteral("Left out")));
}

TEST_CASE("What was withdrawn comes back as that from a list that an export wrote")
{
    Workshop workshop;
    const auto session = workshop.session();
    const QString text = QStringLiteral("id,name,withdrawn_on,withdrawn_why\n"
                                        "9001,Old rib,2025-01-05,Never built\n"
                                        "9002,Rib,,\n");
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Component);
    dialog.setText(text);
    CHECK_FALSE(dialog.summary().contains(QStringLiteral("Left out")));
    dialog.take();
    const auto *old = session->records()->find(Id<Component>{9001});
    REQUIRE(old);
    CHECK(old->withdrawn_why == "Never built");
    CHECK(session->records()->findLive(Id<Component>{9002}));
    ui::ListDialog again(*session);
    again.setType(RecordType::Component);
    again.setText(text);
    CHECK(again.rows().countOf(exchange::CsvRow::Fate::AlreadyThere) == 2);
    CHECK(again.rows().countOf(exchange::CsvRow::Fate::Wrong) == 0);
}

TEST_CASE("A column that is headed as the screen calls a field fills that field")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setType(RecordType::Component);
    dialog.setText(QStringLiteral("Code,Name,lies inside\nSK,Ski kit,\nSK-1,Left ski,SK\n"));
    CHECK(dialog.columns().chosen() == exchange::CsvColumns{"code", "name", "parent_id"});
    dialog.take();
    const auto &parts = session->records()->components;
    const auto kit = std::ranges::find(parts, std::string("SK"), &Component::code);
    const auto ski = std::ranges::find(parts, std::string("SK-1"), &Component::code);
    REQUIRE(kit != parts.end());
    REQUIRE(ski != parts.end());
    CHECK(ski->parent_id == kit->id);
}

TEST_CASE("Whether a list has headings is guessed anew for what it lists, until somebody says it")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.show();
    auto *headings = dialog.findChild<QCheckBox *>();
    REQUIRE(headings);
    dialog.setType(RecordType::WorkSession);
    CHECK(headings->isChecked());
    dialog.setType(RecordType::Component);
    dialog.setText(QStringLiteral("began,minutes\n2026-03-13,90\n"));
    CHECK_FALSE(headings->isChecked());
    dialog.setType(RecordType::WorkSession);
    CHECK(headings->isChecked());
    headings->click();
    dialog.setType(RecordType::Component);
    dialog.setType(RecordType::WorkSession);
    CHECK_FALSE(headings->isChecked());
    dialog.setText(QStringLiteral("began,minutes\n2026-03-12,60\n"));
    CHECK(headings->isChecked());
}

TEST_CASE("Of another list the columns are guessed anew")
{
    Workshop workshop;
    const auto session = workshop.session();
    ui::ListDialog dialog(*session);
    dialog.setText(QStringLiteral("Name\tCode\nRib 1\tLW-R1\n"));
    dialog.columns().choose(1, {});
    dialog.setText(QStringLiteral("Name\tCode\nRib 2\tLW-R2\n"));
    CHECK(dialog.columns().chosen() == exchange::CsvColumns{"name", "code"});
}

} // namespace lastrivet::test
