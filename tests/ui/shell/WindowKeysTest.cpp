// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"
#include "tests/ui/support/WholeWindow.h"
#include "ui/shell/MainWindow.h"

#include <QScreen>
#include <QSettings>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

namespace {

using Opened = test::WholeWindow;

} // namespace

TEST_CASE("The window is not larger than its screen, also where it was when it was closed")
{
    Opened opened;
    const QSize room = opened.window.screen()->availableGeometry().size();
    CHECK(opened.window.width() <= room.width());
    CHECK(opened.window.height() < room.height());
    opened.window.resize(room + QSize(300, 200));
    opened.settings.setValue(QStringLiteral("window"), opened.window.saveGeometry());
    const MainWindow again{
        {opened.settings, opened.workshop.executor, test::theme(), opened.workshop.clock}};
    CHECK(again.width() <= room.width());
    CHECK(again.height() < room.height());
}

} // namespace lastrivet::ui
