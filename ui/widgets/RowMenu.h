// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QObject>

#include <functional>
#include <vector>

class QAbstractItemView;
class QMenu;
class QModelIndex;
class QPoint;
class QPushButton;
class QShortcut;
class QWidget;

namespace lastrivet::ui {

/// What can be done with a row of a list, where the right mouse button, the Menu key or Shift+F10
/// asks: the buttons and keys that the page has for its chosen row, as they stand at that moment.
class RowMenu final : public QObject {
    Q_OBJECT

public:
    using Fill = std::function<void(QMenu &menu)>;

    explicit RowMenu(QAbstractItemView &list);

    /// Says which key does in the list what the button does.
    static void tellKeys(QPushButton &button, const QKeySequence &keys);
    /// Puts a line into a menu that is being filled.
    static void addLine(QMenu &menu, const QString &words, const QKeySequence &keys,
                        bool isPossible, std::function<void()> run);

    /// In the order in which they are added.
    void addButton(QPushButton &button);
    /// Every button in it that can be seen.
    void addBar(QWidget &bar);
    /// A key of the list without a button, under the words of its help.
    void addKey(QShortcut &key, std::function<bool()> isPossible);
    /// What the row itself has to be asked for.
    void addMore(Fill fill);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void openForCurrent();
    void open(const QModelIndex &row, const QPoint &place);
    /// False where it cannot be: a heading among the rows.
    bool choose(const QModelIndex &row);
    static void addShown(QMenu &menu, QPushButton &button);

    QAbstractItemView &m_list;
    std::vector<Fill> m_fills;
};

} // namespace lastrivet::ui
