// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalDelegate.h"

#include "ui/journal/JournalModel.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/RowFrame.h"
#include "ui/widgets/WrappedText.h"

#include <QPainter>

namespace lastrivet::ui {

namespace {

constexpr int edge = 12;

QString joined(QStringList texts)
{
    texts.removeAll(QString());
    return texts.join(QStringLiteral(" · "));
}

} // namespace

JournalDelegate::JournalDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize JournalDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const int line = option.fontMetrics.lineSpacing();
    const bool isDay = index.data(JournalModel::IsDayRole).toBool();
    return {280, isDay ? line + 4 * Theme::space : 2 * line + 4 * Theme::space};
}

void JournalDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                            const QModelIndex &index) const
{
    painter->save();
    if (index.data(JournalModel::IsDayRole).toBool())
        paintDay(*painter, option, index);
    else
        paintEntry(*painter, option, index);
    painter->restore();
}

void JournalDelegate::paintDay(QPainter &painter, const QStyleOptionViewItem &option,
                               const QModelIndex &index) const
{
    painter.fillRect(option.rect, m_theme.colours().raised);
    QFont font = option.font;
    font.setBold(true);
    painter.setFont(font);
    painter.setPen(m_theme.colours().text);
    paintCut(painter, option.rect.adjusted(edge, 0, -edge, 0), index.data().toString());
}

void JournalDelegate::paintEntry(QPainter &painter, const QStyleOptionViewItem &option,
                                 const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    paintRowFrame(painter, option, colours);
    const int line = option.fontMetrics.lineSpacing();
    const int time = option.fontMetrics.horizontalAdvance(QStringLiteral("00:00 AM "));
    const QRect inside = option.rect.adjusted(edge, 2 * Theme::space, -edge, -2 * Theme::space);
    const QRect upper(inside.left(), inside.top(), inside.width(), line);
    const QRect lower = upper.translated(0, line);
    painter.setPen(colours.text);
    paintCut(painter, upper.adjusted(time, 0, 0, 0), index.data().toString());
    painter.setPen(colours.quietText);
    paintCut(painter, QRect(upper.topLeft(), QSize(time, line)),
             index.data(JournalModel::TimeRole).toString());
    paintCut(painter, lower.adjusted(time, 0, 0, 0),
             joined({index.data(JournalModel::WhoRole).toString(),
                     index.data(JournalModel::MarksRole).toString(),
                     index.data(JournalModel::RecordsRole).toString()}));
}

} // namespace lastrivet::ui
