// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/support/Hands.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QTest>

#include <catch2/catch.hpp>

#include <algorithm>

namespace lastrivet::test {

namespace {

template <class Widget> Widget &named(QWidget &place, const QString &name)
{
    INFO(name.toStdString());
    // Fields made after their page is shown appear with the next events.
    QCoreApplication::processEvents();
    const auto widgets = place.findChildren<Widget *>();
    const auto found = std::ranges::find_if(widgets, [&](const Widget *widget) {
        return widget->accessibleName() == name && widget->isVisible();
    });
    REQUIRE(found != widgets.end());
    return **found;
}

} // namespace

QPushButton *button(QWidget &place, const QString &words)
{
    for (QPushButton *candidate : place.findChildren<QPushButton *>()) {
        if (candidate->text() == words && candidate->isVisible() && candidate->isEnabled())
            return candidate;
    }
    return nullptr;
}

void press(QWidget &place, const QString &words)
{
    QPushButton *found = nullptr;
    // Buttons made after their panel is shown appear with the next events.
    (void)QTest::qWaitFor([&] { return (found = button(place, words)) != nullptr; }, 500);
    INFO(words.toStdString());
    REQUIRE(found);
    QTest::mouseClick(found, Qt::LeftButton);
}

QLineEdit &field(QWidget &place, const QString &name)
{
    return named<QLineEdit>(place, name);
}

QComboBox &choice(QWidget &place, const QString &name)
{
    return named<QComboBox>(place, name);
}

QListView &list(QWidget &place, const QString &name)
{
    return named<QListView>(place, name);
}

void type(QWidget &place, const QString &name, const QString &text)
{
    QLineEdit &line = field(place, name);
    line.setFocus();
    line.selectAll();
    QTest::keyClicks(&line, text);
}

bool says(QWidget &place, const QString &words)
{
    const auto labels = place.findChildren<QLabel *>();
    return std::ranges::any_of(labels, [&](const QLabel *label) {
        return label->isVisible() && label->text().contains(words);
    });
}

} // namespace lastrivet::test
