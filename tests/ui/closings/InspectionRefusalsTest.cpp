// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/ClosingUp.h"
#include "core/project/acts/Inspecting.h"
#include "tests/ui/support/InspectionLoop.h"
#include "ui/closings/AnswerForm.h"
#include "ui/closings/CloseForm.h"
#include "ui/closings/ClosingView.h"
#include "ui/closings/ClosingsPage.h"
#include "ui/closings/FindingRows.h"
#include "ui/closings/InspectionView.h"
#include "ui/closings/PacketForm.h"
#include "ui/closings/PacketTask.h"
#include "ui/closings/VisitBoard.h"
#include "ui/closings/VisitForm.h"
#include "ui/closings/VisitPlanModel.h"
#include "ui/convert/QtText.h"
#include "ui/widgets/RowListView.h"
#include "ui/widgets/Section.h"
#include "ui/widgets/SheetBox.h"

#include <QClipboard>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

#include <algorithm>
#include <utility>
#include <vector>

namespace lastrivet::ui {

namespace {

using Loop = test::InspectionLoop;
using test::press;
using test::says;
using test::type;

} // namespace

TEST_CASE("An authority with one request at a time is told of, and the open one can be extended")
{
    Loop loop;
    const auto first = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    press(loop.page, QStringLiteral("Inspection visit"));
    CHECK(says(loop.page, QStringLiteral("one request at a time")));
    press(loop.page, QStringLiteral("Record the request"));
    CHECK(loop.records()->inspections.size() == 1);
    test::picture(loop.page, 1110, 700, "visit-one-request");
    press(loop.page, QStringLiteral("Add these hold points to it"));
    CHECK(loop.records()->inspections.size() == 1);
    const auto &points = loop.records()->find(first)->hold_point_ids;
    CHECK(points.size() == 2);
    CHECK(std::ranges::binary_search(points, loop.preCover(loop.workshop.wingClosing)));
}

TEST_CASE("A second request can be recorded all the same, since it may have been made")
{
    Loop loop;
    loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    press(loop.page, QStringLiteral("Inspection visit"));
    press(loop.page, QStringLiteral("Record the request"));
    CHECK(loop.records()->inspections.size() == 1);
    press(loop.page, QStringLiteral("Record the request"));
    CHECK(loop.records()->inspections.size() == 2);
}

TEST_CASE("A visit after the closing says once that it does not count for it")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    REQUIRE(loop.session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, loop.workshop.aileronClosing,
                    {*edit.today().plusDays(-1), loop.workshop.builder, "in haste"});
    }));
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(says(loop.page, QStringLiteral("before this visit")));
    CHECK_FALSE(loop.records()->find(visit)->held_on);
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(loop.records()->find(visit)->held_on);
}

TEST_CASE("Of each closing that was closed before the visit it is said")
{
    Loop loop;
    const std::vector closings{loop.workshop.aileronClosing, loop.workshop.rudderClosing};
    const auto visit = loop.ask({loop.preCover(closings.front()), loop.preCover(closings.back())});
    REQUIRE(loop.session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        for (const auto closing : closings)
            acts::close(edit, closing,
                        {*edit.today().plusDays(-1), loop.workshop.builder, "in haste"});
    }));
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    press(loop.page, QStringLiteral("Record the visit"));
    for (const auto closing : closings)
        CHECK(says(
            loop.page,
            QStringLiteral("“%1” was closed on").arg(toQt(loop.records()->find(closing)->title))));
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(loop.records()->find(visit)->held_on);
}

TEST_CASE("A closing on a day before its signatures says what stood against it, and asks why")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    const auto before = loop.records();
    REQUIRE(loop.session->change(QStringLiteral("Signed"), [&](Edit &edit) {
        for (const HoldPoint &point : before->hold_points) {
            if (point.closing_id != closing)
                continue;
            SignOff signature;
            signature.hold_point_id = point.id;
            signature.person_id = loop.workshop.inspector;
            signature.signed_on = edit.today();
            edit.put(signature);
        }
    }));
    loop.page.showRecord({RecordType::Closing, closing.value()});
    press(loop.page, QStringLiteral("Record the closing"));
    QLineEdit &day = test::field(loop.page, QStringLiteral("On"));
    const auto record = [&] { QTest::keyClick(&day, Qt::Key_Return, Qt::ControlModifier); };
    type(loop.page, QStringLiteral("On"), QStringLiteral("2026-03-13"));
    record();
    CHECK(says(loop.page, QStringLiteral("was not signed before the closing")));
    CHECK(loop.records()->find(closing)->events.empty());
    type(loop.page, QStringLiteral("Reason"), QStringLiteral("in haste"));
    record();
    CHECK(loop.records()->find(closing)->events.size() == 1);
}

TEST_CASE("What keeps a request from being recorded can be read in a window of little height")
{
    Loop loop;
    loop.page.resize(1000, 240);
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    press(loop.page, QStringLiteral("Inspection visit"));
    type(loop.page, QStringLiteral("Day"), QStringLiteral("2026-02-31"));
    QTest::keyClick(&test::field(loop.page, QStringLiteral("Day")), Qt::Key_Return,
                    Qt::ControlModifier);
    const auto isSeen = [&] {
        return std::ranges::any_of(loop.page.findChildren<QLabel *>(), [](const QLabel *label) {
            return label->text().contains(QStringLiteral("is no day")) &&
                   !label->visibleRegion().isEmpty();
        });
    };
    CHECK(QTest::qWaitFor(isSeen, 500));
}

TEST_CASE("A visit is not planned for a day before it was asked for")
{
    Loop loop;
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    press(loop.page, QStringLiteral("Inspection visit"));
    type(loop.page, QStringLiteral("Day"), QStringLiteral("2025-03-20"));
    press(loop.page, QStringLiteral("Record the request"));
    CHECK(says(loop.page, QStringLiteral("cannot lie before that")));
    CHECK(loop.records()->inspections.isEmpty());
    type(loop.page, QStringLiteral("Day"), QStringLiteral("2026-03-20"));
    press(loop.page, QStringLiteral("Record the request"));
    CHECK(loop.records()->inspections.size() == 1);
}

TEST_CASE("Signatures and closings of days to come, and by people without the role, are refused")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    loop.page.showRecord({RecordType::Closing, closing.value()});
    loop.page.view().startSigning(loop.preCover(closing));
    QComboBox &by = test::choice(loop.page, QStringLiteral("Signed by"));
    by.setEditText(QStringLiteral("robin vale"));
    press(loop.page, QStringLiteral("Record the signature"));
    CHECK(says(loop.page, QStringLiteral("only an inspector's word counts")));
    by.setCurrentIndex(0);
    type(loop.page, QStringLiteral("On"), QStringLiteral("2026-03-15"));
    press(loop.page, QStringLiteral("Record the signature"));
    CHECK(says(loop.page, QStringLiteral("lies ahead")));
    type(loop.page, QStringLiteral("On"), QStringLiteral("2026-02-31"));
    press(loop.page, QStringLiteral("Record the signature"));
    CHECK(says(loop.page, QStringLiteral("is no day")));
    CHECK(loop.records()->sign_offs.isEmpty());
    CHECK(loop.records()->people.size() == 2);
}

TEST_CASE("The credential of one inspector is not recorded for another")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    loop.page.showRecord({RecordType::Closing, closing.value()});
    loop.page.view().startSigning(loop.preCover(closing));
    QComboBox &by = test::choice(loop.page, QStringLiteral("Signed by"));
    QLineEdit &credential = test::field(loop.page, QStringLiteral("Credential"));
    CHECK(credential.text() == QStringLiteral("I-204"));
    by.setEditText(QStringLiteral("Kim Arden"));
    CHECK(credential.text().isEmpty());
    type(loop.page, QStringLiteral("Credential"), QStringLiteral("I-377"));
    by.setEditText(QStringLiteral("Kim Ardens"));
    CHECK(credential.text() == QStringLiteral("I-377"));
    by.setEditText(QStringLiteral("Sam Orrin"));
    CHECK(credential.text() == QStringLiteral("I-204"));
}

TEST_CASE("A sheet that is gone by the time of recording keeps the whole visit from being recorded")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    const QString sheet = loop.photo(QStringLiteral("sheet.png"), 30);
    loop.page.visit().sheet().setFile(sheet);
    REQUIRE(QFile::remove(sheet));
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(says(loop.page, QStringLiteral("sheet.png is not there any more")));
    CHECK_FALSE(loop.records()->find(visit)->held_on);
    CHECK(loop.records()->sign_offs.isEmpty());
}

TEST_CASE("Two findings of one number, and findings that are said and not typed, are asked about")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    loop.page.visit().findings().takeLines(QStringLiteral("5. One\n5. Another"));
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(says(loop.page, QStringLiteral("Two findings have the number 5")));
    CHECK_FALSE(loop.records()->find(visit)->held_on);
}

TEST_CASE("A pasted finding keeps the day that its line gives, until the line is taken out")
{
    Loop loop;
    const auto visit = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Inspection, visit.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    FindingRows &rows = loop.page.visit().findings();
    rows.setUsual(acts::Verifying::InspectorByPhoto);
    rows.takeLines(QStringLiteral("1. 2026-03-10: Crack\n2. Burr"));
    REQUIRE(rows.findings().size() == 2);
    CHECK(rows.findings()[0].found_on == Moment::parse("2026-03-10"));
    CHECK(rows.findings()[0].note == "A photograph of the correction is enough for the inspector.");
    CHECK_FALSE(rows.findings()[1].found_on);
    test::field(loop.page, QStringLiteral("Finding 1")).clear();
    type(loop.page, QStringLiteral("Finding 1"), QStringLiteral("Dent"));
    REQUIRE(rows.findings().size() == 2);
    CHECK(rows.findings()[0].title == "Dent");
    CHECK_FALSE(rows.findings()[0].found_on);
}

TEST_CASE("The packet is made in three forms, and a place that cannot take it is told of before")
{
    Loop loop;
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    loop.page.view().addPhotos({loop.photo(QStringLiteral("inside.png"), 120)});
    press(loop.page, QStringLiteral("Make packet"));
    test::picture(loop.page, 1110, 700, "packet-form");
    const QString title = toQt(loop.session->records()->find(loop.workshop.wingClosing)->title);
    for (const auto *label : loop.page.findChild<PacketForm *>()->findChildren<QLabel *>()) {
        if (label->text() == title)
            CHECK(label->height() >= label->heightForWidth(label->width()));
    }
    type(loop.page, QStringLiteral("Goes to"), loop.file(QStringLiteral("nowhere/packet.pdf")));
    press(loop.page, QStringLiteral("Make the packet"));
    CHECK(says(loop.page, QStringLiteral("There is no folder")));

    const QString pdf = loop.file(QStringLiteral("packet.pdf"));
    type(loop.page, QStringLiteral("Goes to"), loop.file(QStringLiteral("packet")));
    press(loop.page, QStringLiteral("Make the packet"));
    QFile made(pdf);
    REQUIRE(made.open(QIODevice::ReadOnly));
    CHECK(made.read(5) == "%PDF-");

    press(loop.page, QStringLiteral("Make packet"));
    test::choice(loop.page, QStringLiteral("Form")).setCurrentIndex(1);
    const QString folder = loop.file(QStringLiteral("Packet"));
    type(loop.page, QStringLiteral("Goes to"), folder);
    press(loop.page, QStringLiteral("Make the packet"));
    CHECK(QFile::exists(folder + QStringLiteral("/SHA256SUMS")));
    CHECK(QDir(folder + QStringLiteral("/photos")).entryList(QDir::Files).size() == 1);

    press(loop.page, QStringLiteral("Make packet"));
    type(loop.page, QStringLiteral("Goes to"), folder);
    press(loop.page, QStringLiteral("Make the packet"));
    CHECK(says(loop.page, QStringLiteral("is called Packet there already")));
    CHECK(loop.complained.isEmpty());
}

TEST_CASE("A packet takes the place of a file only when that is asked for twice")
{
    Loop loop;
    loop.page.showRecord({RecordType::Closing, loop.workshop.wingClosing.value()});
    const QString pdf = loop.file(QStringLiteral("packet.pdf"));
    QFile older(pdf);
    REQUIRE(older.open(QIODevice::WriteOnly));
    older.write("older");
    older.close();
    press(loop.page, QStringLiteral("Make packet"));
    type(loop.page, QStringLiteral("Goes to"), pdf);
    press(loop.page, QStringLiteral("Make the packet"));
    CHECK(says(loop.page, QStringLiteral("A file of this name is there")));
    REQUIRE(older.open(QIODevice::ReadOnly));
    CHECK(older.readAll() == "older");
    older.close();
    press(loop.page, QStringLiteral("Make the packet"));
    REQUIRE(older.open(QIODevice::ReadOnly));
    CHECK(older.read(5) == "%PDF-");
}

TEST_CASE("At a hold point whose planning was undone meanwhile nothing is signed")
{
    Loop loop;
    const auto closing = loop.workshop.aileronClosing;
    Id<HoldPoint> planned;
    REQUIRE(loop.session->change(QStringLiteral("Planned"), [&](Edit &edit) {
        HoldPoint point;
        point.closing_id = closing;
        point.kind = HoldPointKind::IndependentCheck;
        point.signer_role = SignerRole::Builder;
        point.planned_on = edit.today();
        planned = edit.put(std::move(point));
    }));
    loop.page.showRecord({RecordType::Closing, closing.value()});
    loop.page.view().startSigning(planned);
    loop.session->undo();
    REQUIRE_FALSE(loop.records()->find(planned));
    press(loop.page, QStringLiteral("Record the signature"));
    CHECK(says(loop.page, QStringLiteral("no longer on record")));
    CHECK(loop.records()->sign_offs.isEmpty());
}

TEST_CASE("What was said at a visit whose request is withdrawn meanwhile is a visit of its own")
{
    Loop loop;
    const auto asked = loop.ask({loop.preCover(loop.workshop.aileronClosing)});
    loop.page.showRecord({RecordType::Inspection, asked.value()});
    press(loop.page, QStringLiteral("Record what was said"));
    type(loop.page, QStringLiteral("Also there"), QStringLiteral("Jo Tamm"));
    REQUIRE(loop.session->change(QStringLiteral("Withdrawn"),
                                 [&](Edit &edit) { edit.withdraw(asked, "asked for twice"); }));
    press(loop.page, QStringLiteral("Record the visit"));
    CHECK(says(loop.page, QStringLiteral("no longer on record")));
    CHECK(loop.records()->sign_offs.isEmpty());
    press(loop.page, QStringLiteral("Record the visit"));
    const auto records = loop.records();
    REQUIRE(records->sign_offs.size() == 1);
    const auto visit = records->sign_offs.begin()->inspection_id;
    CHECK(visit != asked);
    REQUIRE(records->findLive(visit));
    CHECK(records->findLive(visit)->present.size() == 1);
    CHECK(loop.complained.isEmpty());
}

} // namespace lastrivet::ui
