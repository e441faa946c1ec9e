// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/PhotoDelegate.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/MediaModel.h"
#include "ui/widgets/WrappedText.h"

#include <QPainter>

namespace lastrivet::ui {

namespace {

constexpr int margin = 2 * Theme::space;

void drawPicture(QPainter &painter, const QRect &place, const QPixmap &picture)
{
    const QSize own = picture.deviceIndependentSize().toSize();
    const QSize size = own.scaled(place.size(), Qt::KeepAspectRatio);
    QRect where({0, 0}, size);
    where.moveCenter(place.center());
    // A picture that the loader fitted is only copied, which is what keeps scrolling smooth.
    if (own == size) {
        painter.drawPixmap(where.topLeft(), picture);
        return;
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawPixmap(where, picture);
}

} // namespace

PhotoDelegate::PhotoDelegate(const Theme &theme, int edge, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
    , m_edge(edge)
{
}

QSize PhotoDelegate::cardSize(const QFontMetrics &metrics) const
{
    return {m_edge + 2 * margin, m_edge * 3 / 4 + m_textLines * metrics.lineSpacing() + 3 * margin};
}

QSize PhotoDelegate::frame() const
{
    return {m_edge, m_edge * 3 / 4};
}

QSize PhotoDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &) const
{
    return cardSize(option.fontMetrics);
}

void PhotoDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                          const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    const bool isChosen = option.state.testFlag(QStyle::State_Selected);
    painter->save();
    const QRect card = option.rect.adjusted(2, 2, -2, -2);
    if (isChosen)
        painter->fillRect(card, colours.selection);
    if (option.state.testFlag(QStyle::State_HasFocus)) {
        painter->setPen(QPen(colours.accent, 2));
        painter->drawRect(card.adjusted(1, 1, -1, -1));
    }
    const QRect place(card.left() + margin, card.top() + margin, card.width() - 2 * margin,
                      m_edge * 3 / 4);
    const auto picture = index.data(Qt::DecorationRole).value<QPixmap>();
    if (picture.isNull()) {
        const QString failure = index.data(MediaModel::FailureRole).toString();
        const QString words =
            failure.isEmpty() ? index.data(MediaModel::KindRole).toString() : failure;
        const QRect inside = place.adjusted(6, 6, -6, -6);
        painter->fillRect(place, colours.raised);
        painter->setPen(colours.quietText);
        painter->drawText(inside, Qt::AlignCenter | Qt::TextWordWrap,
                          withShortWords(words, painter->fontMetrics(), inside.width()));
    } else {
        drawPicture(*painter, place, picture);
    }
    painter->setFont(option.font);
    drawWords(*painter, place, index);
    painter->restore();
}

/// Below the picture.
void PhotoDelegate::drawWords(QPainter &painter, const QRect &place, const QModelIndex &index) const
{
    const QFontMetrics metrics(painter.font());
    QRect line(place.left(), place.bottom() + margin / 2, place.width(), metrics.lineSpacing());
    painter.setPen(m_theme.colours().text);
    for (const int role :
         {int(Qt::DisplayRole), int(MediaModel::DayRole), int(MediaModel::ShowsRole)}) {
        if (role == MediaModel::ShowsRole && m_textLines < 3)
            break;
        const QString words = index.data(role).toString();
        if (words.isEmpty())
            continue;
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         metrics.elidedText(words, Qt::ElideRight, line.width()));
        line.translate(0, metrics.lineSpacing());
        painter.setPen(m_theme.colours().quietText);
    }
}

} // namespace lastrivet::ui
