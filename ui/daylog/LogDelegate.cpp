// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogDelegate.h"

#include "ui/daylog/LogModel.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/RowFrame.h"
#include "ui/widgets/WrappedText.h"

#include <QPainter>
#include <QPixmap>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 12;

QString joined(std::initializer_list<QString> texts)
{
    QStringList list(texts);
    list.removeAll(QString());
    return list.join(QStringLiteral(" · "));
}

} // namespace

LogDelegate::LogDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize LogDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const int line = option.fontMetrics.lineSpacing();
    const bool isDay = index.data(LogModel::IsDayRole).toBool();
    return {280, isDay ? line + 4 * Theme::space : 2 * line + 3 * Theme::space};
}

void LogDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                        const QModelIndex &index) const
{
    painter->save();
    if (index.data(LogModel::IsDayRole).toBool())
        paintDay(*painter, option, index);
    else
        paintEntry(*painter, option, index);
    painter->restore();
}

void LogDelegate::paintDay(QPainter &painter, const QStyleOptionViewItem &option,
                           const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    painter.fillRect(option.rect, colours.raised);
    QFont font = option.font;
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(colours.text);
    const QRect inside = option.rect.adjusted(edge, 0, -edge, 0);
    painter.drawText(inside, Qt::AlignRight | Qt::AlignVCenter,
                     index.data(LogModel::TotalRole).toString());
    paintCut(painter, inside.adjusted(0, 0, -80, 0), index.data().toString());
}

/// The first photos at the right end of the row; answers how wide they are.
int LogDelegate::paintPictures(QPainter &painter, const QRect &row, const QModelIndex &index) const
{
    const auto pictures = index.data(LogModel::PicturesRole).value<QList<QPixmap>>();
    const int side = row.height() - 2 * Theme::space;
    int right = row.right() - Theme::space;
    for (const QPixmap &picture : pictures) {
        const QRect place(right - side, row.top() + Theme::space, side, side);
        // The middle of the picture, as wide as high.
        const int shorter = std::min(picture.width(), picture.height());
        const QRect part((picture.width() - shorter) / 2, (picture.height() - shorter) / 2, shorter,
                         shorter);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.drawPixmap(place, picture, part);
        right = place.left() - Theme::space;
    }
    return pictures.isEmpty() ? 0 : row.right() - right;
}

void LogDelegate::paintEntry(QPainter &painter, const QStyleOptionViewItem &option,
                             const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    paintRowFrame(painter, option, colours);
    const int line = option.fontMetrics.lineSpacing();
    const int timeWidth = option.fontMetrics.horizontalAdvance(QStringLiteral("about 00:00 "));
    const int pictures = paintPictures(painter, option.rect, index);
    const QRect inside =
        option.rect.adjusted(edge, Theme::space + 2, -edge - pictures, -Theme::space - 2);
    const QRect upper(inside.left(), inside.top(), inside.width(), line);
    const QRect lower = upper.translated(0, line);
    const int left = timeWidth + edge;
    painter.setPen(colours.text);
    paintCut(painter, QRect(upper.topLeft(), QSize(timeWidth, line)),
             index.data(LogModel::DurationRole).toString(), Qt::AlignRight);
    paintCut(painter, upper.adjusted(left, 0, 0, 0), index.data().toString());
    painter.setPen(colours.quietText);
    paintCut(painter, QRect(lower.topLeft(), QSize(timeWidth, line)),
             index.data(LogModel::TimeRole).toString(), Qt::AlignRight);
    const int photos = index.data(LogModel::PhotosRole).toInt();
    paintCut(
        painter, lower.adjusted(left, 0, 0, 0),
        joined({index.data(LogModel::PlaceRole).toString(),
                index.data(LogModel::KindRole).toString(), index.data(LogModel::WhoRole).toString(),
                photos > 0 ? LogModel::tr("%n photos", nullptr, photos) : QString(),
                index.data(LogModel::MarksRole).toString()}));
}

} // namespace lastrivet::ui
