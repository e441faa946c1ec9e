// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace lastrivet::ui {

/// The line whose words narrow what a page lists: Escape empties it, and Ctrl+F leads to it from
/// wherever the keyboard is in its window.
class FilterLine final : public QLineEdit {
    Q_OBJECT

public:
    explicit FilterLine(QWidget *parent = nullptr);

protected:
    void keyPressEvent(QKeyEvent *event) override;
};

} // namespace lastrivet::ui
