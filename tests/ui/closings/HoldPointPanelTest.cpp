// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/HoldPointPanel.h"

#include "tests/ui/support/Workshop.h"

#include <QApplication>
#include <QPushButton>
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

} // namespace lastrivet::ui
