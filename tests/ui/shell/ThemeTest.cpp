// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Theme.h"

#include "tests/ui/support/Workshop.h"

#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QImage>
#include <QPalette>
#include <QScrollBar>
#include <QTreeWidget>
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

TEST_CASE("The handle of a scroll bar is seen as a shape, 3 : 1, in the light and in the dark")
{
    Theme &theme = test::theme();
    const auto before = theme.choice();
    const auto choice = GENERATE(Theme::Choice::Light, Theme::Choice::Dark);
    const auto isVertical = GENERATE(true, false);
    theme.choose(choice);
    {
        QScrollBar bar(isVertical ? Qt::Vertical : Qt::Horizontal);
        bar.setRange(0, 100);
        bar.setPageStep(50);
        bar.resize(isVertical ? QSize(bar.sizeHint().width(), 200)
                              : QSize(200, bar.sizeHint().height()));
        const QImage image = bar.grab().toImage();
        const auto at = [&](int along) {
            return isVertical ? image.pixelColor(image.width() / 2, along)
                              : image.pixelColor(along, image.height() / 2);
        };
        // ColoursTest holds the one against the other.
        CHECK(at(30).name().toStdString() == theme.colours().border.name().toStdString());
        CHECK(at(190).name().toStdString() == theme.colours().window.name().toStdString());
    }
    theme.choose(before);
}

TEST_CASE("A row of which a part is ticked is told from one that is not, in light and in dark")
{
    Theme &theme = test::theme();
    const auto before = theme.choice();
    const auto choice = GENERATE(Theme::Choice::Light, Theme::Choice::Dark);
    theme.choose(choice);
    {
        QTreeWidget tree;
        tree.resize(240, 160);
        const QRgb accent = theme.colours().accent.rgb();
        const auto inked = [&](Qt::CheckState state) {
            tree.clear();
            auto *item = new QTreeWidgetItem(&tree, {QStringLiteral("Wing")});
            item->setCheckState(0, state);
            const QRect place = tree.visualItemRect(item);
            const QImage image = tree.viewport()->grab(place).toImage();
            int count = 0;
            for (int x = 0; x < image.width(); ++x) {
                for (int y = 0; y < image.height(); ++y)
                    count += image.pixel(x, y) == accent ? 1 : 0;
            }
            return count;
        };
        CHECK(inked(Qt::Unchecked) == 0);
        CHECK(inked(Qt::PartiallyChecked) > 50);
        CHECK(inked(Qt::Checked) > 50);
    }
    theme.choose(before);
}

TEST_CASE("A box with nothing in it to choose is told from the form that it stands on")
{
    Theme &theme = test::theme();
    const auto before = theme.choice();
    const auto choice = GENERATE(Theme::Choice::Light, Theme::Choice::Dark);
    theme.choose(choice);
    {
        QComboBox box;
        box.setEnabled(false);
        box.resize(200, box.sizeHint().height());
        const QImage image = box.grab().toImage();
        const QColor ground = image.pixelColor(image.width() / 2, image.height() / 2);
        CHECK(ground.name().toStdString() == theme.colours().raised.name().toStdString());
    }
    theme.choose(before);
}

} // namespace lastrivet::ui
