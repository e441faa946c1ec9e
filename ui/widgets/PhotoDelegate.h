// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace lastrivet::ui {

class Theme;

/// Draws a picture with its caption and day beneath, on a card of one size.
class PhotoDelegate final : public QStyledItemDelegate {
    Q_OBJECT

public:
    /// `edge` is the longest edge of a picture on screen.
    PhotoDelegate(const Theme &theme, int edge, QObject *parent = nullptr);
    /// A third line on each card says what the picture shows.
    void setShowsTold() { m_textLines = 3; }

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override;
    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override;
    QSize cardSize(const QFontMetrics &metrics) const;
    /// The place of the picture on its card.
    QSize frame() const;

private:
    void drawWords(QPainter &painter, const QRect &place, const QModelIndex &index) const;

    const Theme &m_theme;
    int m_edge;
    int m_textLines = 2;
};

} // namespace lastrivet::ui
