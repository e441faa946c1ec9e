// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

class QComboBox;
class QLabel;
class QLayout;
class QPushButton;
class QScrollArea;
class QString;
class QWidget;

namespace lastrivet::ui {

/// Removes everything from a layout; widgets go when the event that led here is over.
void clearLayout(QLayout &layout);

/// A bold line over what follows.
QLabel *heading(const QString &words, QWidget *parent);

/// A label that breaks its words into lines where there is no room for one.
QLabel *wrappedLabel(const QString &words, QWidget *parent);

/// An area that scrolls over the content; the keyboard goes to what is in it.
QScrollArea *scrollArea(QWidget &content, QWidget *parent);

/// Scrolls the area around the part to it, when the layout has placed it.
void bringIntoSight(QWidget &part);

/// The Tab key goes through these places one after the other, and through each as before; to be
/// called again when something was made in one of them.
void setTabOrderOf(const std::vector<QWidget *> &places);

/// Makes the box no wider than so many letters, however long its longest word is.
void makeNarrow(QComboBox &box, int letters);

/// A button of words alone, for what is done less often.
QPushButton *flatButton(const QString &words, QWidget *parent);

/// Marks the button as the thing to do next, or no longer.
void setPrimary(QPushButton &button, bool isPrimary);

} // namespace lastrivet::ui
