// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/ui/support/Workshop.h"
#include "ui/convert/QtText.h"
#include "ui/shell/MainWindow.h"

#include <QApplication>
#include <QSettings>
#include <QTest>

#include <catch2/catch.hpp>

namespace lastrivet::test {

/// The program's window with settings of its own, and a workshop that can be opened in it.
struct WholeWindow {
    void open() { REQUIRE(window.openFolder(ui::pathText(workshop.folder()))); }
    /// Shows the window with the keyboard.
    void show()
    {
        window.resize(1280, 720);
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        QApplication::setActiveWindow(&window);
    }
    void openAndShow()
    {
        open();
        show();
    }

    Workshop workshop;
    TemporaryFolder folder;
    QSettings settings{ui::pathText(folder / "settings.ini"), QSettings::IniFormat};
    ui::MainWindow window{{settings, workshop.executor, theme(), workshop.clock}};
};

} // namespace lastrivet::test
