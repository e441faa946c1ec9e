// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

class QComboBox;
class QLineEdit;
class QListView;
class QPushButton;
class QWidget;

// What a person can do with a page: only what is visible can be pressed or typed in.
namespace lastrivet::test {

/// The button with these words; null when there is none to press.
QPushButton *button(QWidget &place, const QString &words);
/// Clicks the button with these words with the mouse; fails the test when there is none.
void press(QWidget &place, const QString &words);
/// The field with this name; fails the test when there is none.
QLineEdit &field(QWidget &place, const QString &name);
QComboBox &choice(QWidget &place, const QString &name);
QListView &list(QWidget &place, const QString &name);
/// Types into a field with the keyboard, in place of what it holds.
void type(QWidget &place, const QString &name, const QString &text);
/// True when a label with these words in it can be read.
bool says(QWidget &place, const QString &words);

} // namespace lastrivet::test
