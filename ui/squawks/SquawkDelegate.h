// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class Theme;

/// Draws a squawk in two lines: severity, number, title and state; place, and how long it can be
/// reached. Above the first of a group stands what the group is.
class SquawkDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit SquawkDelegate(const Theme &theme, QObject *parent = nullptr);

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;

private:
    int headingHeight(const QStyleOptionViewItem &option, const QModelIndex &index) const;
    void paintHeading(QPainter &painter, const QStyleOptionViewItem &option, const QRect &place,
                      const QModelIndex &index) const;
    void paintTitle(QPainter &painter, const QStyleOptionViewItem &option, const QRect &place,
                    const QModelIndex &index) const;
    void paintPlace(QPainter &painter, const QStyleOptionViewItem &option, const QRect &place,
                    const QModelIndex &index) const;

    const Theme &m_theme;
};

} // namespace lastrivet::ui
