// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Pages.h"

#include "core/base/Error.h"

#include <QPageLayout>
#include <QPageSize>

#include <algorithm>
#include <utility>

namespace lastrivet::print {

namespace {

QPageLayout layoutOf(Paper paper)
{
    const QPageSize size(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter);
    QPageLayout layout(size, QPageLayout::Portrait, QMarginsF());
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

/// Also what follows without a table is a line at least, and is not torn from its heading.
double leastBelow(double following)
{
    return std::max(following, lineHeight(Size::Body));
}

/// Where the running head begins, above the body.
constexpr double headAbove = points(26);

void drawLineAcross(QPainter &painter, const QRectF &body, double y, double weight)
{
    painter.setPen(QPen(Qt::black, weight));
    painter.drawLine(QLineF(body.left(), y, body.right(), y));
}

} // namespace

Pages::Pages(QIODevice &device, Paper paper, Margins margins, const Wording &wording, Outline known,
             OnPage onPage)
    : m_wording(wording)
    , m_margins(std::move(margins))
    , m_known(std::move(known))
    , m_onPage(std::move(onPage))
    , m_body(m_margins.are_bare ? QRectF(QPointF(), sizeOf(paper)) : bodyOf(paper))
    , m_size(sizeOf(paper))
    , m_writer(&device)
{
    m_writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
    m_writer.setResolution(unitsPerInch);
    m_writer.setPageLayout(layoutOf(paper));
    if (!m_painter.begin(&m_writer))
        throw Fault("The pages could not be laid out.");
    m_painter.setRenderHint(QPainter::LosslessImageRendering);
    m_outline.before_cautions = m_known.before_cautions;
    beginPage();
}

Pages::~Pages()
{
    if (m_painter.isActive())
        m_painter.end();
}

void Pages::gap(double distance)
{
    if (!isAtTop())
        m_y += distance;
}

void Pages::breakPage()
{
    m_writer.newPage();
    beginPage();
}

void Pages::need(double height)
{
    if (height > spaceLeft() && !isAtTop())
        breakPage();
}

double Pages::bottom() const
{
    constexpr double goesOver = points(40);
    const auto &end = m_known.before_cautions;
    const bool endsEarly = end && end->page == m_outline.page_count;
    return endsEarly ? end->bottom - goesOver : m_body.bottom();
}

void Pages::noteLoneCautions(double endBefore)
{
    // The first layout has no contents yet, and other page ends.
    if (m_known.page_count > 0 && !m_outline.before_cautions)
        m_outline.before_cautions = LoneEnd{m_outline.page_count - 1, endBefore};
}

void Pages::beginPage()
{
    m_y = m_body.top();
    if (m_onPage && !m_onPage(m_outline.page_count))
        throw Cancelled{};
    ++m_outline.page_count;
    if (m_margins.are_bare)
        return;
    if (m_outline.page_count > 1)
        drawHead();
    else if (!m_margins.first_head.isEmpty())
        drawFirstHead();
    drawFoot();
}

void Pages::drawFirstHead()
{
    m_painter.setPen(Qt::black);
    fitted(m_margins.first_head, Size::Small, m_body.width(), 2)
        .draw(m_painter, {m_body.left(), m_body.top() - headAbove});
}

void Pages::drawHead()
{
    const double y = m_body.top() - headAbove;
    const TextBlock left = fitted(m_margins.head_left, Size::Small, m_body.width() * 0.52, 1);
    const double taken = left.naturalWidth() + points(14);
    const TextBlock right =
        fitted(m_margins.head_right, Size::Small, m_body.width() - taken, 1, false, Qt::AlignRight);
    m_painter.setPen(Qt::black);
    left.drawLines(m_painter, {m_body.left(), y}, 0, 1);
    right.drawLines(m_painter, {m_body.left() + taken, y}, 0, 1);
    drawLineAcross(m_painter, m_body, y + points(13), points(0.5));
}

void Pages::drawFoot()
{
    const double y = m_body.bottom() + points(14);
    const int total = std::max(m_known.page_count, m_outline.page_count);
    const QString number = m_wording.text(
        "page {0} of {1}", {std::to_string(m_outline.page_count), std::to_string(total)});
    const TextBlock page(number, Size::Small, m_body.width() * 0.25, true, Qt::AlignRight);
    const TextBlock foot = fitted(m_margins.foot, Size::Small, m_body.width() * 0.75, 1);
    drawLineAcross(m_painter, m_body, y - points(4), points(0.5));
    m_painter.setPen(Qt::black);
    foot.draw(m_painter, {m_body.left(), y});
    page.draw(m_painter, {m_body.left() + m_body.width() * 0.75, y});
    if (m_outline.page_count == 1)
        TextBlock(m_margins.first_foot, Size::Small, m_body.width())
            .draw(m_painter, {m_body.left(), y + lineHeight(Size::Small)});
}

void Pages::heading(int level, const QString &title, double following)
{
    const Size size = level == 0 ? Size::Heading : Size::Subheading;
    const TextBlock block(title, size, m_body.width(), true);
    const double above = level == 0 ? points(22) : points(14);
    const double line = level == 0 ? points(1.2) : 0;
    need(above + block.height() + points(8) + line + leastBelow(following));
    gap(above);
    m_outline.headings.push_back({level, title, m_outline.page_count - 1, m_y});
    m_painter.setPen(Qt::black);
    block.draw(m_painter, {m_body.left(), m_y});
    m_y += block.height() + points(2);
    if (level == 0)
        rule(line);
    m_y += points(6);
}

void Pages::smallHeading(const QString &title, double following)
{
    const TextBlock block(title, Size::Body, m_body.width(), true);
    need(points(12) + block.height() + points(3) + leastBelow(following));
    gap(points(12));
    m_painter.setPen(Qt::black);
    block.draw(m_painter, {m_body.left(), m_y});
    m_y += block.height() + points(3);
}

void Pages::text(const QString &text, Size size, bool isBold)
{
    textAt(0, text, size, isBold);
}

void Pages::textAt(double indent, const QString &text, Size size, bool isBold)
{
    const TextBlock block(text, size, m_body.width() - indent, isBold);
    int line = 0;
    while (line < block.lineCount()) {
        const int rest = block.lineCount() - line;
        // Neither the first line nor the last one stands alone on its page.
        need(block.lineHeight() * (rest <= 3 ? rest : 2));
        int fitting = std::clamp(int(spaceLeft() / block.lineHeight()), 1, rest);
        if (rest - fitting == 1 && fitting > 2)
            --fitting;
        m_painter.setPen(Qt::black);
        block.drawLines(m_painter, {m_body.left() + indent, m_y}, line, fitting);
        m_y += fitting * block.lineHeight();
        line += fitting;
    }
}

void Pages::rule(double weight)
{
    drawLineAcross(m_painter, m_body, m_y, weight);
    m_y += weight;
}

void Pages::link(const QRectF &place, std::size_t heading)
{
    m_links.push_back({m_outline.page_count - 1, place, heading});
}

} // namespace lastrivet::print
