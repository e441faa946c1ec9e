// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class Theme;

/// Draws the log: a day with its total, and entries with time and duration in front of what was
/// done.
class LogDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit LogDelegate(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    void paintDay(QPainter &painter, const QStyleOptionViewItem &option,
                  const QModelIndex &index) const;
    void paintEntry(QPainter &painter, const QStyleOptionViewItem &option,
                    const QModelIndex &index) const;
    int paintPictures(QPainter &painter, const QRect &row, const QModelIndex &index) const;

    const Theme &m_theme;
};

} // namespace lastrivet::ui
