// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/closings/LedgerDelegate.h"

#include "ui/closings/LedgerModel.h"
#include "ui/closings/Mend.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Density.h"
#include "ui/widgets/Marks.h"
#include "ui/widgets/RowDelegate.h"
#include "ui/widgets/WrappedText.h"

#include <QAbstractItemView>
#include <QPainter>

namespace lastrivet::ui {

using readiness::Outcome;

namespace {

constexpr int markWidth = 28;
constexpr int blockerIndent = 28;
constexpr int side = 8;
constexpr int above = 4;
/// Of what stands in the way; what would clear it has one more.
constexpr int sentenceLines = 2;
/// Between a demand and what came of it.
constexpr int gap = 16;

/// A tick for met, a short dash where nothing is on record; open rules have their weight's bar.
void paintOutcome(QPainter &painter, const QRectF &place, Outcome outcome, const Colours &colours)
{
    painter.setRenderHint(QPainter::Antialiasing);
    const QPointF middle = place.center();
    if (outcome == Outcome::Met) {
        painter.setPen(QPen(colours.clear, 2));
        painter.drawPolyline(
            QPolygonF{middle + QPointF(-5, 0), middle + QPointF(-1, 4), middle + QPointF(6, -5)});
    } else if (outcome == Outcome::NothingOnRecord) {
        painter.setPen(QPen(colours.notBegun, 2));
        painter.drawLine(middle + QPointF(-4, 0), middle + QPointF(4, 0));
    }
    painter.setRenderHint(QPainter::Antialiasing, false);
}

bool isOpen(Outcome outcome)
{
    return outcome == Outcome::NotMet || outcome == Outcome::Advice;
}

/// With what was counted where there is room for it beside the demand.
QString outcomeIn(int width, const readiness::LedgerLine &line, const QFontMetrics &metrics)
{
    const QString outcome = inWords(readiness::inWords(line.outcome));
    if (line.looked_at == 0)
        return outcome;
    const QString counted = QStringLiteral("%1 · %2").arg(
        inWords(readiness::countedBy(line.rule, line.looked_at)), outcome);
    return metrics.horizontalAdvance(counted) + gap <= width ? counted : outcome;
}

} // namespace

LedgerDelegate::LedgerDelegate(const LedgerModel &model, const Theme &theme, QObject *parent)
    : QStyledItemDelegate(parent)
    , m_model(model)
    , m_theme(theme)
{
}

QSize LedgerDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    const auto *view = qobject_cast<const QAbstractItemView *>(option.widget);
    int lines = 1;
    if (m_model.blocker(index) && view) {
        const QRect row(0, 0, view->viewport()->width(), rowHeight());
        const int width = wordsOf(row, option.fontMetrics, index).width();
        lines += int(
            wrapped(m_model.sentence(*m_model.blocker(index)), option.font, width, sentenceLines)
                .size());
    }
    return {200, std::max(rowHeight(), heightOfLines(option.font, lines) + 2 * above + 2)};
}

QRect LedgerDelegate::wordsOf(const QRect &row, const QFontMetrics &metrics,
                              const QModelIndex &index) const
{
    const QRect button = RowDelegate::actionPlace(row, metrics, mendWords(m_model.mend(index)));
    const int right = button.isEmpty() ? side : button.width() + 2 * side;
    return row.adjusted(blockerIndent, above, -right, -above);
}

void LedgerDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option,
                           const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    painter->save();
    const bool isChosen = option.state & QStyle::State_Selected;
    if (isChosen || option.state & QStyle::State_MouseOver)
        painter->fillRect(option.rect, isChosen ? colours.selection : colours.window);
    painter->setFont(option.font);
    if (m_model.blocker(index))
        paintBlocker(*painter, option.rect, index);
    else
        paintRule(*painter, option.rect, index);
    if (option.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(colours.accent, 2));
        painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
    }
    painter->restore();
}

void LedgerDelegate::paintRule(QPainter &painter, const QRect &place,
                               const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    const auto &line = m_model.line(index);
    if (isOpen(line.outcome))
        paintWeight(painter, place.adjusted(0, 3, 0, -3),
                    line.outcome == Outcome::NotMet ? readiness::Weight::Must
                                                    : readiness::Weight::Should,
                    colours);
    paintOutcome(painter, QRectF(place.left() + 4, place.top(), markWidth - 4, place.height()),
                 line.outcome, colours);
    QFont words = painter.font();
    words.setBold(isOpen(line.outcome));
    painter.setFont(words);
    painter.setPen(line.outcome == Outcome::NothingOnRecord ? colours.quietText : colours.text);
    const QString demand = asSentence(readiness::demandOf(line.rule));
    const QFontMetrics metrics(words);
    const QRect text = place.adjusted(markWidth, 0, -side, 0);
    const QString right =
        outcomeIn(text.width() - metrics.horizontalAdvance(demand), line, metrics);
    const int rightWidth = metrics.horizontalAdvance(right) + gap;
    painter.drawText(text, Qt::AlignRight | Qt::AlignVCenter, right);
    const QRect left = text.adjusted(0, 0, -rightWidth, 0);
    painter.drawText(left, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(demand, Qt::ElideRight, left.width()));
}

void LedgerDelegate::paintBlocker(QPainter &painter, const QRect &place,
                                  const QModelIndex &index) const
{
    const Colours &colours = m_theme.colours();
    const auto &blocker = *m_model.blocker(index);
    const QFontMetrics metrics = painter.fontMetrics();
    const QString action = mendWords(m_model.mend(index));
    const QRect button = RowDelegate::actionPlace(place, metrics, action);
    const QRect words = wordsOf(place, metrics, index);
    const int line = heightOfLines(painter.font(), 1);
    painter.setPen(colours.text);
    paintWrapped(painter, words.adjusted(0, 0, 0, -line), m_model.sentence(blocker));
    const QRect last(words.left(), words.bottom() + 1 - line, words.width(), line);
    painter.setPen(colours.quietText);
    painter.drawText(last, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(m_model.clearedBy(blocker), Qt::ElideRight, last.width()));
    if (!button.isEmpty())
        RowDelegate::paintButton(painter, button, action, colours);
}

} // namespace lastrivet::ui
