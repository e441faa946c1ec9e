// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Theme.h"

#include "tests/ui/support/Workshop.h"

#include <QApplication>
#include <QEvent>
#include <QPalette>
#include <QWidget>

#include <catch2/catch.hpp>

namespace lastrivet::ui {

TEST_CASE("When the system's look changes, what a person chose stays as it was")
{
    Theme &theme = test::theme();
    const auto before = theme.choice();
    const auto choice = GENERATE(Theme::Choice::Light, Theme::Choice::Dark);
    theme.choose(choice);
    int changes = 0;
    QWidget window;
    QObject::connect(&theme, &Theme::changed, &window, [&] { ++changes; });
    QEvent event(QEvent::ThemeChange);
    QCoreApplication::sendEvent(&window, &event);
    QCoreApplication::sendEvent(&window, &event);
    // Ours is taken away to see the system's, and is there again when the window is next painted.
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
    CHECK(changes == 0);
    CHECK(theme.isDark() == (choice == Theme::Choice::Dark));
    CHECK(QApplication::palette().color(QPalette::Window) == theme.colours().window);
    CHECK(QApplication::palette().color(QPalette::Link) == theme.colours().accent);
    theme.choose(before);
}

} // namespace lastrivet::ui
