// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkDelegate.h"

#include "ui/shell/Theme.h"
#include "ui/squawks/SquawkModel.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowFrame.h"

#include <QPainter>

namespace lastrivet::ui {

namespace {

constexpr int markWidth = 28;
constexpr int markSize = 16;

QFont bold(QFont font)
{
    font.setBold(true);
    return font;
}

} // namespace

SquawkDelegate::SquawkDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize SquawkDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &) const
{
    return {240, 2 * option.fontMetrics.lineSpacing() + 4 * Theme::space};
}

void SquawkDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                           const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    painter->save();
    paintRowFrame(*painter, option, colours);
    const int line = option.fontMetrics.lineSpacing();
    const QRect inside = option.rect.adjusted(12, 2 * Theme::space, -12, -2 * Theme::space);
    paintSeverity(*painter, QRectF(inside.left(), inside.top() + (line - markSize) / 2.0, markSize, markSize),
                  Severity(index.data(SquawkModel::SeverityRole).toInt()), colours);
    QRect first(inside.left() + markWidth, inside.top(), inside.width() - markWidth, line);
    const QString state = index.data(SquawkModel::StateRole).toString();
    const int stateWidth = std::min(option.fontMetrics.horizontalAdvance(state) + 4, first.width() / 2);
    painter->setPen(colours.quietText);
    painter->drawText(first, Qt::AlignRight | Qt::AlignVCenter,
                      option.fontMetrics.elidedText(state, Qt::ElideRight, stateWidth));
    first.adjust(0, 0, -stateWidth - 12, 0);
    const QString title = index.data(SquawkModel::NumberRole).toString() + QStringLiteral("   ") +
                          index.data().toString();
    painter->setPen(colours.text);
    painter->setFont(bold(option.font));
    painter->drawText(first, Qt::AlignLeft | Qt::AlignVCenter,
                      QFontMetrics(painter->font()).elidedText(title, Qt::ElideRight, first.width()));
    painter->setFont(option.font);
    QRect second(inside.left() + markWidth, inside.top() + line, inside.width() - markWidth, line);
    const QString reach = index.data(SquawkModel::ReachRole).toString();
    const QString place = index.data(SquawkModel::PlaceRole).toString();
    const int placeWidth =
        reach.isEmpty() ? second.width()
                        : std::min(option.fontMetrics.horizontalAdvance(place) + 4, second.width() / 2);
    painter->setPen(colours.quietText);
    painter->drawText(second, Qt::AlignLeft | Qt::AlignVCenter,
                      option.fontMetrics.elidedText(place, Qt::ElideRight, placeWidth));
    second.adjust(placeWidth + 12, 0, 0, 0);
    const bool isUrgent = index.data(SquawkModel::UrgentRole).toBool();
    painter->setPen(isUrgent ? colours.text : colours.quietText);
    painter->drawText(second, Qt::AlignRight | Qt::AlignVCenter,
                      option.fontMetrics.elidedText(reach, Qt::ElideRight, second.width()));
    painter->restore();
}

} // namespace lastrivet::ui
