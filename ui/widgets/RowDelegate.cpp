// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/RowDelegate.h"

#include "ui/shell/Theme.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowListModel.h"
#include "ui/widgets/SvgIcon.h"
#include "ui/widgets/WrappedText.h"

#include <QAbstractItemView>
#include <QPainter>

namespace lastrivet::ui {

namespace {

/// Marks say how urgent a row is; all other icons only what it is about.
QColor colourOf(const QString &icon, const Colours &colours)
{
    if (icon == QLatin1String("marks/alert"))
        return colours.closedEarly;
    return icon == QLatin1String("marks/soon") ? colours.hold : colours.quietText;
}

constexpr int side = 8;
constexpr int above = 5;
/// Smaller than the margin beside words and marks.
constexpr int shownBar = 4;

const ListRow &rowOf(const QModelIndex &index)
{
    return static_cast<const RowListModel *>(index.model())->row(index.row());
}

void paintMark(QPainter &painter, const QRectF &place, const ListRow &row, const Colours &colours)
{
    if (row.state)
        paintState(painter, place, *row.state, true, colours);
    else if (row.severity)
        paintSeverity(painter, place, *row.severity, colours);
    else if (!row.icon.isEmpty())
        paintSvg(painter, place, row.icon, colourOf(row.icon, colours));
}

bool hasMark(const ListRow &row)
{
    return row.state || row.severity || !row.icon.isEmpty();
}

int figureWidth(const ListRow &row, const QFontMetrics &metrics)
{
    return row.figure.isEmpty() ? 0 : metrics.horizontalAdvance(row.figure) + 12;
}

void paintWords(QPainter &painter, const QRect &words, int titleHeight, int detailHeight,
                const ListRow &row, const Colours &colours)
{
    const QFontMetrics metrics = painter.fontMetrics();
    const int figure = figureWidth(row, metrics);
    painter.setPen(colours.text);
    const QRect title(words.left(), words.top(), words.width() - figure, titleHeight);
    paintWrapped(painter, title, row.title);
    painter.drawText(QRect(words.left(), words.top(), words.width(), metrics.height()),
                     Qt::AlignRight | Qt::AlignVCenter, row.figure);
    painter.setPen(colours.quietText);
    paintWrapped(painter, QRect(words.left(), title.bottom() + 1, words.width(), detailHeight),
                 row.detail);
}

} // namespace

RowDelegate::RowDelegate(const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_theme(theme)
{
}

void RowDelegate::paintButton(QPainter &painter, const QRect &place, const QString &words,
                              const Colours &colours)
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(colours.border);
    painter.setBrush(colours.raised);
    painter.drawRoundedRect(QRectF(place).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    painter.setPen(colours.text);
    painter.drawText(place, Qt::AlignCenter, words);
    painter.setBrush(Qt::NoBrush);
}

QRect RowDelegate::actionPlace(const QRect &row, const QFontMetrics &metrics, const QString &action)
{
    if (action.isEmpty())
        return {};
    const int width = metrics.horizontalAdvance(action) + 20;
    const int height = std::min(row.height() - 8, metrics.height() + 8);
    return {row.right() - side - width, row.top() + (row.height() - height) / 2, width, height};
}

int RowDelegate::markSize() const
{
    return m_isTouch ? 28 : 20;
}

int RowDelegate::leftOfWords(const ListRow &row) const
{
    return hasMark(row) ? side + markSize() + 8 : side;
}

int RowDelegate::wrappedHeight(const QStyleOptionViewItem &option, const ListRow &row,
                               const QString &text, int lines, int figure) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    if (lines == 1 || !view)
        return heightOfLines(option.font, 1);
    const int button = actionPlace(option.rect, option.fontMetrics, row.action).width();
    const int right = button > 0 ? button + 2 * side : side;
    const int width = view->viewport()->width() - leftOfWords(row) - right - figure;
    return heightOfLines(option.font, int(wrapped(text, option.font, width, lines).size()));
}

int RowDelegate::titleHeight(const QStyleOptionViewItem &option, const ListRow &row) const
{
    return wrappedHeight(option, row, row.title, m_titleLines,
                         figureWidth(row, option.fontMetrics));
}

int RowDelegate::detailHeight(const QStyleOptionViewItem &option, const ListRow &row) const
{
    return row.detail.isEmpty() ? 0 : wrappedHeight(option, row, row.detail, m_detailLines, 0);
}

QSize RowDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const ListRow &row = rowOf(index);
    const int detail = row.detail.isEmpty() ? 0 : detailHeight(option, row) + 1;
    const int least = m_isTouch ? touchRowHeight : rowHeight();
    return {100, std::max(least, titleHeight(option, row) + detail + 2 * above)};
}

void RowDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                        const QModelIndex &index) const
{
    const ListRow &row = rowOf(index);
    const Colours &colours = m_theme.colours();
    const QFontMetrics &metrics = option.fontMetrics;
    painter->save();
    painter->setFont(option.font);
    const bool isChosen = option.state & QStyle::State_Selected;
    if (isChosen || option.state & QStyle::State_MouseOver)
        painter->fillRect(option.rect, isChosen ? colours.selection : colours.window);
    if (row.is_shown)
        painter->fillRect(QRect(option.rect.topLeft(), QSize(shownBar, option.rect.height())),
                          colours.accent);
    const QRect button = actionPlace(option.rect, metrics, row.action);
    const int right = button.isEmpty() ? side : button.width() + 2 * side;
    const QRect words = option.rect.adjusted(leftOfWords(row), above, -right, -above);
    const int mark = markSize();
    paintMark(*painter,
              QRectF(option.rect.left() + side, words.top() + (metrics.height() - mark) / 2.0, mark,
                     mark),
              row, colours);
    paintWords(*painter, words, titleHeight(option, row), detailHeight(option, row), row, colours);
    if (!button.isEmpty())
        paintButton(*painter, button, row.action, colours);
    if (option.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(colours.accent, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
    }
    painter->restore();
}

} // namespace lastrivet::ui
