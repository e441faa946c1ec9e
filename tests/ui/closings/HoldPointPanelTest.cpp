// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/HoldPointPanel.h"

#include "core/project/acts/ClosingUp.h"
#include "tests/ui/support/ClosingsWindow.h"
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/Workshop.h"
#include "ui/closings/CheckPanel.h"
#include "ui/closings/LedgerView.h"
#include "ui/closings/SignOffForm.h"

#include <QApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QStringList>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("A button at a hold point keeps the keyboard when the panel is filled anew")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    HoldPointPanel panel(*session);
    panel.show(workshop.wingClosing);
    test::picture(panel, 500, 500, "hold-points");
    QApplication::setActiveWindow(&panel);
    QPushButton *last = nullptr;
    for (QPushButton *button : panel.findChildren<QPushButton *>()) {
        if (button->text() == QStringLiteral("Sign") && button->isVisible())
            last = button;
    }
    REQUIRE(last);
    last->setFocus();
    REQUIRE(panel.focusWidget() == last);
    const QString name = last->objectName();
    panel.show(workshop.wingClosing);
    QCoreApplication::processEvents();
    const auto *now = qobject_cast<QPushButton *>(panel.focusWidget());
    REQUIRE(now);
    CHECK(now != last);
    CHECK(now->isVisible());
    CHECK(now->text() == QStringLiteral("Sign"));
    CHECK(now->objectName() == name);
}

TEST_CASE("A signature from before the closing is entered after it, with a day of its own")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, workshop.aileronClosing,
                    {*edit.today().plusDays(-1), workshop.builder, "in haste"});
    }));
    HoldPointPanel panel(*session);
    panel.show(workshop.aileronClosing);
    test::picture(panel, 500, 500, "hold-points-closed");
    CHECK(test::button(panel, QStringLiteral("Signed before the closing")));
    SignOffForm form(*session);
    form.startFor(*session->records()->find(test::Workshop::point(
        *session->records(), workshop.aileronClosing, HoldPointKind::PreCover)));
    test::picture(form, 600, 500, "signed-before");
    CHECK(test::field(form, QStringLiteral("On")).text().isEmpty());
    test::type(form, QStringLiteral("On"), QStringLiteral("2026-03-14"));
    test::press(form, QStringLiteral("Record the signature"));
    CHECK(test::says(form, QStringLiteral("signed after that does not count")));
    CHECK(session->records()->sign_offs.size() == 0);
    test::type(form, QStringLiteral("On"), QStringLiteral("2026-03-12"));
    test::press(form, QStringLiteral("Record the signature"));
    CHECK(session->records()->sign_offs.size() == 1);
}

TEST_CASE("What accepts a closing afterwards is not of a day before it")
{
    test::Workshop workshop;
    const auto session = workshop.session();
    REQUIRE(session->change(QStringLiteral("Closed"), [&](Edit &edit) {
        acts::close(edit, workshop.aileronClosing,
                    {*edit.today().plusDays(-1), workshop.builder, "in haste"});
    }));
    SignOffForm form(*session);
    form.startLateAcceptance(*session->records()->find(workshop.aileronClosing));
    test::picture(form, 600, 500, "accepted-too-early");
    test::type(form, QStringLiteral("On"), QStringLiteral("2026-03-12"));
    test::press(form, QStringLiteral("Record the signature"));
    CHECK(test::says(form, QStringLiteral("not of a day before that")));
    CHECK(session->records()->sign_offs.size() == 0);
}

TEST_CASE("The Tab key goes through a closing as it is read: ledger, hold points, inspector's list")
{
    test::ClosingsWindow opened;
    opened.open(opened.workshop.wingClosing, "closing-tab");
    QApplication::setActiveWindow(&opened.page);
    auto *ledger = opened.page.findChild<LedgerView *>();
    const auto *points = opened.page.findChild<HoldPointPanel *>();
    const auto *checks = opened.page.findChild<CheckPanel *>();
    REQUIRE(ledger);
    REQUIRE(points);
    REQUIRE(checks);
    const auto way = [&] {
        QCoreApplication::processEvents();
        ledger->setFocus();
        QStringList places;
        for (int i = 0; i < 30 && !places.contains(QStringLiteral("elsewhere")); ++i) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            const QWidget *here = QApplication::focusWidget();
            const QString place = points->isAncestorOf(here)   ? QStringLiteral("points")
                                  : checks->isAncestorOf(here) ? QStringLiteral("checks")
                                                               : QStringLiteral("elsewhere");
            if (places.isEmpty() || places.back() != place)
                places << place;
        }
        return places;
    };
    const QStringList wanted{QStringLiteral("points"), QStringLiteral("checks"),
                             QStringLiteral("elsewhere")};
    CHECK(way() == wanted);
    // The buttons are made anew with each change.
    REQUIRE(opened.session->change(QStringLiteral("Planned"), [&](Edit &edit) {
        HoldPoint point;
        point.closing_id = opened.workshop.wingClosing;
        point.kind = HoldPointKind::PreCover;
        point.signer_role = SignerRole::Inspector;
        edit.put(point);
    }));
    CHECK(way() == wanted);
}

} // namespace lastrivet::ui
