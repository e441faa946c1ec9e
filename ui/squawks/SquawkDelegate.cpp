// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkDelegate.h"

#include "ui/shell/Theme.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowFrame.h"
#include "ui/widgets/WrappedText.h"

#include <QPainter>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 12;
constexpr int markWidth = 28;
constexpr int markSize = 16;

QFont bold(QFont font)
{
    font.setBold(true);
    return font;
}

/// Draws at the right as much as `widest` allows; the room that is left over.
QRect drawAtRight(QPainter &painter, const QRect &place, const QString &text, int widest)
{
    if (text.isEmpty())
        return place;
    const QFontMetrics metrics(painter.font());
    const int width = std::min(metrics.horizontalAdvance(text) + 4, widest);
    painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter,
                     metrics.elidedText(text, Qt::ElideRight, width));
    return place.adjusted(0, 0, -width - edge, 0);
}

} // namespace

SquawkDelegate::SquawkDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

int SquawkDelegate::headingHeight(const QStyleOptionViewItem &option,
                                  const QModelIndex &index) const
{
    return index.data(SquawkModel::HeadingRole).toString().isEmpty()
               ? 0
               : option.fontMetrics.lineSpacing() + 3 * Theme::space;
}

QSize SquawkDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    return {240,
            headingHeight(option, index) + 2 * option.fontMetrics.lineSpacing() + 4 * Theme::space};
}

void SquawkDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                           const QModelIndex &index) const
{
    const int heading = headingHeight(option, index);
    QStyleOptionViewItem row(option);
    row.rect.setTop(option.rect.top() + heading);
    painter->save();
    if (heading > 0)
        paintHeading(*painter, option,
                     QRect(option.rect.topLeft(), QSize(option.rect.width(), heading)), index);
    paintRowFrame(*painter, row, m_theme.colours());
    const int line = option.fontMetrics.lineSpacing();
    const QRect inside = row.rect.adjusted(edge, 2 * Theme::space, -edge, -2 * Theme::space);
    paintSeverity(*painter,
                  QRectF(inside.left(), inside.top() + (line - markSize) / 2.0, markSize, markSize),
                  Severity(index.data(SquawkModel::SeverityRole).toInt()), m_theme.colours());
    const QRect first(inside.left() + markWidth, inside.top(), inside.width() - markWidth, line);
    paintTitle(*painter, option, first, index);
    paintPlace(*painter, option, first.translated(0, line), index);
    painter->restore();
}

void SquawkDelegate::paintHeading(QPainter &painter, const QStyleOptionViewItem &option,
                                  const QRect &place, const QModelIndex &index) const
{
    painter.fillRect(place, m_theme.colours().raised);
    painter.setFont(bold(option.font));
    painter.setPen(m_theme.colours().text);
    paintCut(painter, place.adjusted(edge, 0, -edge, 0),
             index.data(SquawkModel::HeadingRole).toString());
    painter.setFont(option.font);
}

void SquawkDelegate::paintTitle(QPainter &painter, const QStyleOptionViewItem &option,
                                const QRect &place, const QModelIndex &index) const
{
    painter.setPen(m_theme.colours().quietText);
    const QRect room = drawAtRight(painter, place, index.data(SquawkModel::StateRole).toString(),
                                   place.width() / 2);
    painter.setPen(m_theme.colours().text);
    painter.setFont(bold(option.font));
    paintCut(painter, room,
             index.data(SquawkModel::NumberRole).toString() + QStringLiteral("   ") +
                 index.data().toString());
    painter.setFont(option.font);
}

void SquawkDelegate::paintPlace(QPainter &painter, const QStyleOptionViewItem &option,
                                const QRect &place, const QModelIndex &index) const
{
    const QString part = index.data(SquawkModel::PlaceRole).toString();
    const int partWidth =
        std::min(option.fontMetrics.horizontalAdvance(part) + 4, place.width() / 2);
    const bool isUrgent = index.data(SquawkModel::UrgentRole).toBool();
    painter.setPen(isUrgent ? m_theme.colours().text : m_theme.colours().quietText);
    const QRect room = drawAtRight(painter, place, index.data(SquawkModel::ReachRole).toString(),
                                   place.width() - partWidth - edge);
    painter.setPen(m_theme.colours().quietText);
    paintCut(painter, room, part);
}

} // namespace lastrivet::ui
