// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Contents.h"

#include "ui/print/Pages.h"

#include <algorithm>
#include <cstddef>
#include <numeric>
#include <vector>

namespace lastrivet::print {

namespace {

constexpr double numberWidth = points(30);
constexpr double betweenLines = points(2.5);
constexpr double betweenColumns = points(22);
/// A title takes two lines at most.
constexpr int mostLines = 2;
/// The last of them come to the next page together.
constexpr std::size_t together = 4;
/// So few stand below each other also where they run over the page.
constexpr std::size_t mostInOneColumn = 12;

class Contents {
public:
    Contents(Pages &pages, Size size, double width);

    double height(std::size_t from = 0) const
    {
        return std::accumulate(m_heights.begin() + std::ptrdiff_t(from), m_heights.end(), 0.0);
    }
    void drawInOneColumn();
    void drawInTwoColumns();

private:
    std::size_t count() const { return m_heights.size(); }
    const Heading &heading(std::size_t index) const { return m_pages.known().headings[index]; }
    TextBlock titleOf(std::size_t index) const;
    /// Behind the last of those that a column of this height holds.
    std::size_t endOfColumn(std::size_t from, double room) const;
    std::size_t endOfColumns(std::size_t from, double room) const
    {
        return endOfColumn(endOfColumn(from, room), room);
    }
    double lowestRoom(std::size_t from, double most) const;
    std::size_t endOnPage(std::size_t from) const;
    void drawLine(std::size_t index, QPointF topLeft);
    /// Answers how high they are.
    double drawColumn(std::size_t from, std::size_t to, double left);

    Pages &m_pages;
    Size m_size;
    double m_width;
    std::vector<double> m_heights;
};

double indentOf(const Heading &heading)
{
    return heading.level * points(16);
}

Contents::Contents(Pages &pages, Size size, double width)
    : m_pages(pages)
    , m_size(size)
    , m_width(width)
{
    const std::size_t known = pages.known().headings.size();
    m_heights.reserve(known);
    for (std::size_t i = 0; i < known; ++i)
        m_heights.push_back(titleOf(i).height() + betweenLines);
}

/// Of a way through the parts the end tells one from another, so it is cut at its beginning.
TextBlock Contents::titleOf(std::size_t index) const
{
    const double width = m_width - indentOf(heading(index)) - numberWidth;
    const bool isBold = heading(index).level == 0;
    const QString step = QStringLiteral(" › ");
    QString title = heading(index).title;
    TextBlock block(title, m_size, width, isBold);
    for (qsizetype next = title.indexOf(step); block.lineCount() > mostLines && next > 0;
         next = title.indexOf(step, step.size())) {
        title = QStringLiteral("…") + title.mid(next);
        block = TextBlock(title, m_size, width, isBold);
    }
    return fitted(title, m_size, width, mostLines, isBold);
}

void Contents::drawLine(std::size_t index, QPointF topLeft)
{
    const double right = topLeft.x() + m_width;
    const double left = topLeft.x() + indentOf(heading(index));
    const TextBlock title = titleOf(index);
    // As at the foot of the page.
    const TextBlock number(QString::number(heading(index).page + 1), m_size, numberWidth, false,
                           Qt::AlignRight);
    QPainter &painter = m_pages.painter();
    painter.setPen(Qt::black);
    title.draw(painter, {left, topLeft.y()});
    number.draw(painter, {right - numberWidth, topLeft.y()});
    const double dotsFrom = left + title.naturalWidth() + points(6);
    const double dotsTo = right - number.naturalWidth() - points(6);
    const double baseline = topLeft.y() + title.lineHeight() * 0.74;
    QPen dots(Qt::black, points(0.8), Qt::CustomDashLine, Qt::RoundCap);
    dots.setDashPattern({0.1, 5});
    painter.setPen(dots);
    if (title.lineCount() == 1 && dotsTo > dotsFrom)
        painter.drawLine(QLineF(dotsFrom, baseline, dotsTo, baseline));
    m_pages.link({topLeft.x(), topLeft.y(), m_width, m_heights[index]}, index);
}

void Contents::drawInOneColumn()
{
    for (std::size_t i = 0; i < count(); ++i) {
        m_pages.need(i + together == count() ? height(i) : m_heights[i]);
        drawLine(i, {m_pages.body().left(), m_pages.y()});
        m_pages.advance(m_heights[i]);
    }
}

std::size_t Contents::endOfColumn(std::size_t from, double room) const
{
    std::size_t end = from;
    for (double used = 0; end < count() && used + m_heights[end] <= room; ++end)
        used += m_heights[end];
    // A section does not stand at the foot of a column with what is below it in the next.
    const bool isTorn =
        end < count() && end > from + 1 && heading(end - 1).level == 0 && heading(end).level > 0;
    return isTorn ? end - 1 : end;
}

/// Both columns of the last page are about as high as each other.
double Contents::lowestRoom(std::size_t from, double most) const
{
    double room = std::min(most, height(from) / 2);
    while (room < most && endOfColumns(from, room) < count())
        room = std::min(most, room + lineHeight(m_size) / 2);
    return room;
}

std::size_t Contents::endOnPage(std::size_t from) const
{
    const std::size_t end = endOfColumns(from, m_pages.spaceLeft());
    if (end == count() || count() - end >= together)
        return end;
    return std::max(from, count() - std::min(count(), together));
}

double Contents::drawColumn(std::size_t from, std::size_t to, double left)
{
    double drawn = 0;
    for (std::size_t i = from; i < to; ++i) {
        drawLine(i, {left, m_pages.y() + drawn});
        drawn += m_heights[i];
    }
    return drawn;
}

void Contents::drawInTwoColumns()
{
    const double left = m_pages.body().left();
    for (std::size_t from = 0; from < count();) {
        const std::size_t end = endOnPage(from);
        const double most = m_pages.spaceLeft();
        const double room = end == count() ? lowestRoom(from, most) : most;
        const std::size_t middle = std::min(end, endOfColumn(from, room));
        const double first = drawColumn(from, middle, left);
        const double second = drawColumn(middle, end, left + m_width + betweenColumns);
        m_pages.advance(std::max(first, second));
        from = end;
        if (from < count())
            m_pages.breakPage();
    }
}

} // namespace

void drawContents(Pages &pages)
{
    pages.smallHeading(pages.wording().text("Contents"), points(60));
    const double whole = pages.body().width();
    const double room = pages.spaceLeft();
    Contents usual(pages, Size::Body, whole);
    if (usual.height() <= room)
        return usual.drawInOneColumn();
    // Smaller, or in columns, where that keeps them from running over the page by a few lines.
    Contents small(pages, Size::Small, whole);
    if (small.height() <= room)
        return small.drawInOneColumn();
    if (pages.known().headings.size() <= mostInOneColumn)
        return usual.drawInOneColumn();
    Contents(pages, Size::Small, (whole - betweenColumns) / 2).drawInTwoColumns();
}

} // namespace lastrivet::print
