// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/FigureView.h"

#include "ui/widgets/Density.h"
#include "ui/widgets/WrappedText.h"

#include <QApplication>
#include <QFontMetrics>
#include <QHeaderView>
#include <QIcon>
#include <QPainter>
#include <QStyledItemDelegate>
#include <QWheelEvent>

#include <algorithm>
#include <utility>
#include <vector>

namespace lastrivet::ui {

namespace {

constexpr int besideText = 6;
constexpr int overText = 6;
constexpr int besideHead = 2 * besideText + 4;
constexpr int headLines = 4;
constexpr int mark = 14;
constexpr int besideMark = 6;
constexpr int wrapping = int(Qt::AlignLeft | Qt::AlignTop) | int(Qt::TextWordWrap);

/// What a cell's mark takes from its text; 0 without one.
int roomOfMark(bool isMarked)
{
    return isMarked ? mark + besideMark : 0;
}

/// Texts from the top of their row and a hairline below it, so that a number is never read against
/// the source of its neighbour.
class FigureDelegate final : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter *painter, const QStyleOptionViewItem &option,
               const QModelIndex &index) const override
    {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        const QString text = std::exchange(cell.text, QString());
        const QIcon icon = std::exchange(cell.icon, QIcon());
        cell.features &= ~QStyleOptionViewItem::HasDecoration;
        const QStyle *style = cell.widget ? cell.widget->style() : QApplication::style();
        style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);
        painter->save();
        painter->setPen(cell.palette.color(QPalette::Mid));
        painter->drawLine(cell.rect.bottomLeft(), cell.rect.bottomRight());
        painter->setFont(cell.font);
        painter->setPen(cell.palette.color(QPalette::Text));
        const QRect room = cell.rect.adjusted(besideText, overText, -besideText, 0);
        const int down = (cell.fontMetrics.height() - mark) / 2;
        icon.paint(painter, QRect(room.left(), room.top() + down, mark, mark));
        painter->drawText(room.adjusted(roomOfMark(!icon.isNull()), 0, 0, 0), wrapping, text);
        painter->restore();
    }

    QSize sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const override
    {
        QStyleOptionViewItem cell = option;
        initStyleOption(&cell, index);
        // Without a width of its own the text is asked for in one line.
        const int taken = 2 * besideText + roomOfMark(!cell.icon.isNull());
        const int room =
            option.rect.width() > 0 ? std::max(1, option.rect.width() - taken) : QWIDGETSIZE_MAX;
        const QRect text =
            cell.fontMetrics.boundingRect(QRect(0, 0, room, QWIDGETSIZE_MAX), wrapping, cell.text);
        return {text.width() + taken, text.height() + 2 * overText};
    }
};

/// What a column may get: at least its head and its longest word, at most all texts in one line.
struct Wish {
    int column = 0;
    int least = 0;
    int most = 0;
    int width = 0;
};

int widestWordOf(const QString &text, const QFontMetrics &metrics)
{
    int widest = 0;
    for (const QString &word : text.split(QLatin1Char(' ')))
        widest = std::max(widest, metrics.horizontalAdvance(word));
    return widest;
}

int widestWord(const FigureModel &model, int column)
{
    int widest = 0;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex index = model.index(row, column);
        const QFontMetrics metrics(index.data(Qt::FontRole).value<QFont>());
        const int taken = roomOfMark(index.data(Qt::DecorationRole).isValid());
        widest = std::max(widest, widestWordOf(index.data().toString(), metrics) + taken);
    }
    return widest + 2 * besideText + 2;
}

/// Where not even the least has room the widest give way, one as far as the other: the word of a
/// head is never cut for the sake of a long source.
void squeeze(std::vector<Wish>::iterator first, std::vector<Wish>::iterator last, int room)
{
    std::sort(first, last, [](const Wish &a, const Wish &b) { return a.least < b.least; });
    for (; first != last; ++first) {
        first->width = std::min(first->least, std::max(0, room) / int(last - first));
        room -= first->width;
    }
}

/// Narrow columns keep what they need; the others share what is left by the length of their texts.
void share(std::vector<Wish> &wishes, int room)
{
    std::ranges::sort(wishes, {}, &Wish::most);
    int least = 0;
    int most = 0;
    for (const Wish &wish : wishes) {
        least += wish.least;
        most += wish.most;
    }
    auto wide = wishes.begin();
    for (; wide != wishes.end(); ++wide) {
        const int others = least - wide->least;
        if (wide->most > std::min(room / int(wishes.end() - wide), room - others))
            break;
        wide->width = wide->most;
        room -= wide->most;
        least = others;
        most -= wide->most;
    }
    if (room <= least) {
        squeeze(wide, wishes.end(), room);
        return;
    }
    int rest = room;
    for (; wide != wishes.end(); ++wide) {
        wide->width =
            wide->least + (room - least) * (wide->most - wide->least) / std::max(1, most - least);
        rest -= wide->width;
    }
    if (!wishes.empty())
        wishes.back().width += std::max(0, rest);
}

} // namespace

FigureView::FigureView(QWidget *parent)
    : QTableView(parent)
    , m_model(new FigureModel(this))
{
    setModel(m_model);
    setItemDelegate(new FigureDelegate(this));
    // Heads begin where the texts below them do.
    setProperty("roomy", true);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setShowGrid(false);
    setWordWrap(true);
    setTabKeyNavigation(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    verticalHeader()->hide();
    verticalHeader()->setMinimumSectionSize(ui::rowHeight());
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setMinimumSectionSize(24);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            &FigureView::chosenChanged);
}

void FigureView::setTable(FigureTable table)
{
    setAccessibleName(table.title);
    m_model->setTable(std::move(table));
    for (int column = 0; column < m_model->columnCount(); ++column)
        setColumnHidden(column, m_model->isColumnEmpty(column));
    fit();
    Q_EMIT chosenChanged();
}

QString FigureView::chosenSubject() const
{
    const auto row = currentIndex().row();
    return row < 0 ? QString() : m_model->table().rows[std::size_t(row)].subject;
}

void FigureView::fit()
{
    if (m_isFitting)
        return;
    m_isFitting = true;
    std::vector<Wish> wishes;
    QStringList heads = m_model->table().heads;
    const QFont headFont = horizontalHeader()->font();
    const QFontMetrics metrics(headFont);
    for (int column = 0; column < m_model->columnCount(); ++column) {
        if (isColumnHidden(column))
            continue;
        const QString &head = heads[column];
        const int least =
            std::max(widestWordOf(head, metrics) + besideHead, widestWord(*m_model, column));
        const int most =
            std::max(metrics.horizontalAdvance(head) + besideHead, sizeHintForColumn(column) + 2);
        wishes.push_back({column, least, std::max(least, most)});
    }
    share(wishes, viewport()->width());
    for (const Wish &wish : wishes) {
        setColumnWidth(wish.column, wish.width);
        QString &head = heads[wish.column];
        head =
            wrapped(head, headFont, wish.width - besideHead + 2, headLines).join(QLatin1Char('\n'));
    }
    m_model->showHeads(heads);
    resizeRowsToContents();
    m_isFitting = false;
    updateGeometry();
}

QSize FigureView::sizeHint() const
{
    return {400, horizontalHeader()->sizeHint().height() + verticalHeader()->length() +
                     2 * frameWidth()};
}

QSize FigureView::minimumSizeHint() const
{
    return {200, sizeHint().height()};
}

void FigureView::resizeEvent(QResizeEvent *event)
{
    QTableView::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        fit();
}

/// The page scrolls, not the table.
void FigureView::wheelEvent(QWheelEvent *event)
{
    event->ignore();
}

} // namespace lastrivet::ui
