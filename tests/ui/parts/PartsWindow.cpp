// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/parts/PartsWindow.h"

#include "ui/parts/PartDetail.h"
#include "ui/widgets/ActLine.h"

#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

#include <catch2/catch.hpp>

namespace lastrivet::test {

PartsWindow::PartsWindow()
{
    page.resize(1100, 680);
    page.show();
    page.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&page));
}

QTreeView &PartsWindow::tree()
{
    for (auto *view : page.findChildren<QTreeView *>()) {
        if (view->accessibleName() == QStringLiteral("Parts"))
            return *view;
    }
    FAIL("no tree");
    return *page.findChild<QTreeView *>();
}

QTreeView &PartsWindow::list()
{
    return *page.findChild<ui::PartDetail *>()->list();
}

QLineEdit &PartsWindow::field(const QString &name)
{
    // What is asked comes before the fields of the record, which may be called the same.
    for (auto *ask : page.findChildren<ui::ActLine *>()) {
        for (auto *line : ask->findChildren<QLineEdit *>()) {
            if (line->accessibleName() == name && line->isVisible())
                return *line;
        }
    }
    for (auto *line : page.findChildren<QLineEdit *>()) {
        if (line->accessibleName() == name && line->isVisible())
            return *line;
    }
    FAIL("no field " << name.toStdString());
    return *page.findChild<QLineEdit *>();
}

QPushButton &PartsWindow::button(const QString &words)
{
    // What comes into a layout is shown when events are worked off.
    QCoreApplication::processEvents();
    for (auto *button : page.findChildren<QPushButton *>()) {
        if (button->text() == words && button->isVisible())
            return *button;
    }
    FAIL("no button " << words.toStdString());
    return *page.findChild<QPushButton *>();
}

void PartsWindow::enter(const QString &name, const QString &words)
{
    QLineEdit &line = field(name);
    line.clear();
    QTest::keyClicks(&line, words);
    QTest::keyClick(&line, Qt::Key_Return);
}

} // namespace lastrivet::test
