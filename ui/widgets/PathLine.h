// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace lastrivet::ui {

/// A line for the place of a file or folder. While the keyboard is elsewhere, a path that is longer
/// than the line shows its beginning and its end; a tip holds all of it.
class PathLine final : public QLineEdit {
    Q_OBJECT

public:
    explicit PathLine(QWidget *parent = nullptr);

    /// The path as it is read while the keyboard is elsewhere.
    QString shownPath() const;

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    /// Where the letters are.
    QRect lettersPlace() const;
};

} // namespace lastrivet::ui
