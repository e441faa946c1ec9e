// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QLabel;
class QLayout;
class QPushButton;
class QString;
class QWidget;

namespace lastrivet::ui {

/// Removes everything from a layout; widgets go when the event that led here is over.
void clearLayout(QLayout &layout);

/// A bold line over what follows.
QLabel *heading(const QString &words, QWidget *parent);

/// A button of words alone, for what is done less often.
QPushButton *flatButton(const QString &words, QWidget *parent);

/// Marks the button as the thing to do next, or no longer.
void setPrimary(QPushButton &button, bool isPrimary);

} // namespace lastrivet::ui
