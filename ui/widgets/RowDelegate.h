// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

struct Colours;
class Theme;

/// Draws the rows of a `RowListModel`: mark, line, quieter second line, figure.
class RowDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit RowDelegate(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    /// Where the row's button is; empty without one.
    static QRect actionPlace(const QRect &row, const QFontMetrics &metrics, const QString &action);
    static void paintButton(QPainter &painter, const QRect &place, const QString &words,
                            const Colours &colours);
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    const Theme &m_theme;
};

} // namespace lastrivet::ui
