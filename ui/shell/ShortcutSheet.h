// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>
#include <QPointer>
#include <QString>
#include <QStringList>

#include <vector>

class QAction;
class QGridLayout;
class QScrollArea;

namespace lastrivet::ui {

/// Every key on one sheet over the window, those of the shown page too; Esc puts it away.
class ShortcutSheet final : public QFrame {
    Q_OBJECT

public:
    /// The property of a widget that hears keys itself: a QStringList of keys and words in turn.
    static constexpr const char *toldKeys = "toldKeys";

    explicit ShortcutSheet(QWidget *parent);

    /// Leaves when it is open already. `page` is the one that is shown, or none.
    void open(const std::vector<QAction *> &commands, const QWidget *page);

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    struct Line {
        QString keys;
        QString words;

        bool operator==(const Line &) const = default;
    };

    void addLine(const QString &keys, const QString &words);
    void addKeysOf(const QWidget &page);
    /// Keys and words in turn.
    void addTold(const QStringList &told);
    /// The keyboard goes back to where it was.
    void leave();
    void fit();
    void lay(int linesPerColumn);

    QPointer<QWidget> m_before;
    QScrollArea *m_area;
    QWidget *m_place;
    QGridLayout *m_grid;
    std::vector<Line> m_lines;
};

} // namespace lastrivet::ui
