// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/AccountDelegate.h"

#include "ui/journal/AccountModel.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/RowFrame.h"

#include <QAbstractItemView>
#include <QPainter>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int edge = 8;
constexpr int above = 4;
constexpr int widestTitle = 180;
constexpr int wraps = Qt::TextWordWrap;

/// The words of a row at the right of its title.
QRect textPlace(const QRect &row, bool isRecord)
{
    const int title = isRecord ? 0 : std::min(widestTitle, row.width() * 2 / 5);
    return row.adjusted(edge + title + (isRecord ? 0 : edge), above, -edge, -above);
}

QRect titlePlace(const QRect &row)
{
    const int width = std::min(widestTitle, row.width() * 2 / 5);
    return {row.left() + 2 * edge, row.top() + above, width - edge, row.height() - 2 * above};
}

QFont bold(QFont font)
{
    font.setBold(true);
    return font;
}

} // namespace

AccountDelegate::AccountDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

QSize AccountDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    const int width = view ? view->viewport()->width() : 400;
    const bool isRecord = index.data(AccountModel::IsRecordRole).toBool();
    const QFontMetrics metrics(isRecord ? bold(option.font) : option.font);
    const QRect row(0, 0, width, 10000);
    const int text =
        metrics.boundingRect(textPlace(row, isRecord), wraps, index.data().toString()).height();
    const QString title = index.data(AccountModel::TitleRole).toString();
    const int beside = isRecord ? 0 : metrics.boundingRect(titlePlace(row), wraps, title).height();
    return {100, std::max(text, beside) + 2 * above + (isRecord ? above : 0)};
}

void AccountDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                            const QModelIndex &index) const
{
    painter->save();
    const Colours &colours = m_theme.colours();
    const bool isRecord = index.data(AccountModel::IsRecordRole).toBool();
    paintRowFrame(*painter, option, colours);
    painter->setFont(isRecord ? bold(option.font) : option.font);
    const QString title = index.data(AccountModel::TitleRole).toString();
    const QRect text = textPlace(option.rect, isRecord);
    painter->setPen(colours.quietText);
    if (!isRecord)
        painter->drawText(titlePlace(option.rect), wraps, title);
    painter->setPen(colours.text);
    painter->drawText(text, wraps, index.data().toString());
    painter->restore();
}

} // namespace lastrivet::ui
