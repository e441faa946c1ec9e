// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

#include <vector>

class QAction;
class QGridLayout;

namespace lastrivet::ui {

/// Every key on one sheet over the window; Esc puts it away.
class ShortcutSheet final : public QFrame {
    Q_OBJECT

public:
    explicit ShortcutSheet(QWidget *parent);

    void open(const std::vector<QAction *> &commands);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    void addLine(const QString &keys, const QString &words);

    QGridLayout *m_lines;
    int m_count = 0;
};

} // namespace lastrivet::ui
