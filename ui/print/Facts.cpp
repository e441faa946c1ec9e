// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Facts.h"

#include "ui/print/Mark.h"
#include "ui/print/Pages.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

constexpr double betweenColumns = points(18);
constexpr double belowFact = points(5);
/// Pairs of facts are not torn; a higher one would not have room on every page.
constexpr double highestInColumn = points(300);

double columnWidth(const Pages &pages)
{
    return (pages.body().width() - betweenColumns) / 2;
}

bool isLong(const Pages &pages, const Fact &fact)
{
    return TextBlock(fact.value, Size::Body, columnWidth(pages)).height() > highestInColumn;
}

void drawName(Pages &pages, const QString &name, double left, double width)
{
    pages.painter().setPen(QColor(70, 70, 70));
    TextBlock(name, Size::Small, width).draw(pages.painter(), {left, pages.y()});
    pages.painter().setPen(Qt::black);
}

/// Across both columns, and over the end of the page where it has to.
void drawLong(Pages &pages, const Fact &fact)
{
    pages.need(lineHeight(Size::Small) + 2 * lineHeight(Size::Body));
    drawName(pages, fact.name, pages.body().left(), pages.body().width());
    pages.advance(lineHeight(Size::Small));
    pages.text(fact.value);
    pages.advance(belowFact);
}

void drawInColumns(Pages &pages, const std::vector<Fact> &known)
{
    const double width = columnWidth(pages);
    for (std::size_t i = 0; i < known.size(); i += 2) {
        double height = 0;
        const std::size_t end = std::min(i + 2, known.size());
        std::vector<TextBlock> values;
        for (std::size_t k = i; k < end; ++k) {
            values.emplace_back(known[k].value, Size::Body, width);
            height = std::max(height, values.back().height());
        }
        const double nameHeight = lineHeight(Size::Small);
        pages.need(nameHeight + height);
        for (std::size_t k = i; k < end; ++k) {
            const double left = pages.body().left() + double(k - i) * (width + betweenColumns);
            drawName(pages, known[k].name, left, width);
            values[k - i].draw(pages.painter(), {left, pages.y() + nameHeight});
        }
        pages.advance(nameHeight + height + belowFact);
    }
}

} // namespace

void drawFacts(Pages &pages, const std::vector<Fact> &facts)
{
    std::vector<Fact> inColumns;
    std::vector<Fact> across;
    for (const Fact &fact : facts) {
        if (!fact.value.isEmpty())
            (isLong(pages, fact) ? across : inColumns).push_back(fact);
    }
    drawInColumns(pages, inColumns);
    for (const Fact &fact : across)
        drawLong(pages, fact);
}

void drawNotice(Pages &pages, const QString &head, const QString &text)
{
    const QRectF &body = pages.body();
    const double inset = points(24);
    const TextBlock title(head, Size::Body, body.width() - inset - points(10), true);
    const TextBlock words(text, Size::Small, body.width() - inset - points(10));
    const double height = title.height() + words.height() + points(16);
    pages.need(height);
    const QRectF frame(body.left(), pages.y(), body.width(), height);
    QPainter &painter = pages.painter();
    painter.setPen(QPen(Qt::black, points(0.8)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
    drawHatching(painter, QRectF(frame.left(), frame.top(), points(12), height), points(4.5));
    painter.setPen(Qt::black);
    title.draw(painter, frame.topLeft() + QPointF(inset, points(7)));
    words.draw(painter, frame.topLeft() + QPointF(inset, points(9) + title.height()));
    pages.advance(height + points(8));
}

} // namespace lastrivet::print
