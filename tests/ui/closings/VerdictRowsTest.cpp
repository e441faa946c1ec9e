// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/VerdictRows.h"

#include "core/project/acts/Inspecting.h"
#include "tests/ui/support/ClosingsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/VisitForm.h"
#include "ui/shell/ShortcutSheet.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QVBoxLayout>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// So many more that wait for the inspector.
void planMore(Session &session, Id<Closing> closing, int count)
{
    REQUIRE(session.change(QStringLiteral("Planned"), [&](Edit &edit) {
        HoldPoint point;
        point.closing_id = closing;
        point.kind = HoldPointKind::PreCover;
        point.signer_role = SignerRole::Inspector;
        for (int i = 0; i < count; ++i)
            edit.put(point);
    }));
}

} // namespace

TEST_CASE("A visit for a closing ticks what is not signed yet, and nothing that is")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    const auto closing = workshop.aileronClosing;
    const auto point = test::Workshop::point(*session->records(), closing, HoldPointKind::PreCover);
    VerdictRows rows(*session);
    rows.start({closing}, {});
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
    session->change(QStringLiteral("Held"), [&](Edit &edit) {
        acts::HeldInspection held{
            {}, InspectionKind::PreCover, *Moment::parse("2026-03-12"), {}, {}};
        held.inspector_id = workshop.inspector;
        held.verdicts = {{point, SignOffResult::Accepted, {}}};
        acts::holdInspection(edit, held);
    });
    rows.start({closing}, {});
    CHECK(rows.chosen().empty());
    CHECK(rows.verdicts().empty());
    rows.start({}, {point});
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
}

TEST_CASE("What a visit is for stands first, and of the many others that wait a button tells")
{
    test::ClosingsWindow opened;
    const auto closing = opened.workshop.aileronClosing;
    planMore(*opened.session, opened.workshop.wingClosing, 13);
    opened.open(closing, "closing-visit-many");
    test::press(opened.page, QStringLiteral("Inspection visit"));
    QTest::qWait(0);
    const VisitForm &form = opened.page.visit();
    const VerdictRows &rows = form.verdicts();
    const auto point =
        test::Workshop::point(*opened.session->records(), closing, HoldPointKind::PreCover);
    CHECK(rows.findChildren<QCheckBox *>().size() == 1);
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
    const auto *more = rows.findChild<QPushButton *>();
    REQUIRE(more);
    const QString words = more->text();
    CHECK(words.endsWith(QStringLiteral("more wait")));
    test::press(opened.page, words);
    QTest::qWait(0);
    const auto boxes = rows.findChildren<QCheckBox *>();
    REQUIRE(boxes.size() > 13);
    CHECK(boxes.front()->text().startsWith(QStringLiteral("Left aileron")));
    CHECK(boxes[1]->isVisible());
    CHECK_FALSE(test::button(opened.page, words));
    CHECK(rows.chosen() == IdSet<HoldPoint>{point});
    CHECK_FALSE(form.isBegun());
    for (const int box : {2, 1})
        boxes[box]->click();
    CHECK(rows.chosen().size() == 3);
    CHECK(std::ranges::is_sorted(rows.chosen()));
    CHECK(form.isBegun());
}

TEST_CASE("Few others that wait stand behind what a visit is for")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    VerdictRows rows(*session);
    rows.start({workshop.aileronClosing}, {});
    const auto boxes = rows.findChildren<QCheckBox *>();
    REQUIRE(boxes.size() > 1);
    CHECK(boxes.front()->text().startsWith(QStringLiteral("Left aileron")));
    CHECK(rows.findChild<QPushButton *>() == nullptr);
}

TEST_CASE("The Tab key comes to one row of a visit's hold points, and the arrows to the others")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    QWidget window;
    auto *layout = new QVBoxLayout(&window);
    auto *before = new QLineEdit(&window);
    auto *rows = new VerdictRows(*session, &window);
    // What is made later comes later.
    rows->start({workshop.wingClosing, workshop.aileronClosing});
    auto *after = new QLineEdit(&window);
    for (QWidget *part : {static_cast<QWidget *>(before), static_cast<QWidget *>(rows),
                          static_cast<QWidget *>(after)})
        layout->addWidget(part);
    rows->setAsking(false);
    window.show();
    REQUIRE(QTest::qWaitForWindowExposed(&window));
    QApplication::setActiveWindow(&window);
    const auto boxes = rows->findChildren<QCheckBox *>();
    const auto results = rows->findChildren<QComboBox *>();
    REQUIRE(boxes.size() > 1);
    REQUIRE(results.size() == boxes.size());
    REQUIRE(boxes.front()->isChecked());
    const auto press = [](Qt::Key key) { QTest::keyClick(QApplication::focusWidget(), key); };
    before->setFocus();
    press(Qt::Key_Tab);
    CHECK(boxes.front()->hasFocus());
    press(Qt::Key_Tab);
    CHECK(results.front()->hasFocus());
    press(Qt::Key_Tab);
    CHECK(after->hasFocus());
    boxes.front()->setFocus();
    press(Qt::Key_Up);
    CHECK(boxes.front()->hasFocus());
    press(Qt::Key_Down);
    CHECK(boxes[1]->hasFocus());
    const bool wasPicked = boxes[1]->isChecked();
    press(Qt::Key_Space);
    CHECK(boxes[1]->isChecked() != wasPicked);
    if (wasPicked)
        press(Qt::Key_Space);
    press(Qt::Key_Right);
    CHECK(results[1]->hasFocus());
    press(Qt::Key_Left);
    CHECK(boxes[1]->hasFocus());
    // The list is entered where it was left.
    after->setFocus();
    QTest::keyClick(after, Qt::Key_Backtab, Qt::ShiftModifier);
    CHECK(results[1]->hasFocus());
}

TEST_CASE("The sheet of keys tells how one goes through a visit's hold points")
{
    test::ClosingsWindow opened;
    opened.open(opened.workshop.aileronClosing, "closing-visit-keys");
    const auto isTold = [&] {
        ShortcutSheet sheet(&opened.page);
        sheet.open({}, &opened.page);
        return test::says(sheet, QStringLiteral("Another hold point of a visit"));
    };
    CHECK_FALSE(isTold());
    test::press(opened.page, QStringLiteral("Inspection visit"));
    QTest::qWait(0);
    CHECK(isTold());
}

} // namespace lastrivet::ui
