// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/MarkPainter.h"

#include "ui/convert/QtText.h"
#include "ui/print/MarkShapes.h"
#include "ui/shell/Colours.h"

#include <QFontMetricsF>
#include <QLineF>
#include <QPainter>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr double headLength = 18;
constexpr double lineWidth = 2.5;
constexpr double edgeWidth = 6;
constexpr double reach = 8;
constexpr double pointSize = 9;

QPainterPath outlineOf(const Media::Annotation &mark, const QRectF &place)
{
    return print::outline(mark, print::placesOn(place, mark.points), headLength);
}

} // namespace

MarkPainter::MarkPainter(const std::vector<Media::Annotation> &marks, const QRectF &place,
                         const QFont &font)
    : m_marks(marks)
    , m_place(place)
    , m_font(font)
{
}

QRectF MarkPainter::wordsBox(const Media::Annotation &mark) const
{
    const auto places = print::placesOn(m_place, mark.points);
    if (places.empty() || (mark.text.empty() && mark.shape != AnnotationShape::Text))
        return {};
    const QFontMetricsF metrics(m_font);
    const double width = std::max(metrics.horizontalAdvance(toQt(mark.text)), 12.0);
    return print::wordsBox(m_place, print::wordsPlace(mark, places),
                           QSizeF(width + 12, metrics.height() + 6), outlineOf(mark, m_place),
                           edgeWidth);
}

void MarkPainter::draw(QPainter &painter, int chosen, const Colours &colours) const
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(m_font);
    for (int i = 0; i < int(m_marks.size()); ++i) {
        const Media::Annotation &mark = m_marks[std::size_t(i)];
        const QColor ink = i == chosen ? colours.accent : QColor(Qt::black);
        const QPainterPath path = outlineOf(mark, m_place);
        for (const QPen &pen : {QPen(Qt::white, edgeWidth), QPen(ink, lineWidth)}) {
            QPen round(pen);
            round.setCapStyle(Qt::RoundCap);
            painter.strokePath(path, round);
        }
        if (const QRectF box = wordsBox(mark); !box.isNull()) {
            painter.setPen(QPen(ink, i == chosen ? 2 : 1));
            painter.setBrush(Qt::white);
            painter.drawRect(box);
            painter.setPen(Qt::black);
            painter.drawText(box, Qt::AlignCenter, toQt(mark.text));
        }
        if (i != chosen)
            continue;
        painter.setPen(QPen(ink, 2));
        painter.setBrush(Qt::white);
        for (const QPointF &point : print::placesOn(m_place, mark.points))
            painter.drawRect(
                QRectF(point - QPointF(pointSize, pointSize) / 2, QSizeF(pointSize, pointSize)));
    }
    painter.restore();
}

bool MarkPainter::isAt(const Media::Annotation &mark, const QPointF &point) const
{
    if (wordsBox(mark).contains(point))
        return true;
    QPainterPathStroker stroker;
    stroker.setWidth(2 * reach);
    return stroker.createStroke(outlineOf(mark, m_place)).contains(point);
}

std::optional<Grip> MarkPainter::gripAt(const QPointF &point, int chosen) const
{
    if (chosen >= 0 && chosen < int(m_marks.size())) {
        const auto places = print::placesOn(m_place, m_marks[std::size_t(chosen)].points);
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (QLineF(places[i], point).length() <= reach)
                return Grip{chosen, places.size() == 1 ? -1 : int(i)};
        }
    }
    for (int i = int(m_marks.size()) - 1; i >= 0; --i) {
        if (isAt(m_marks[std::size_t(i)], point))
            return Grip{i, -1};
    }
    return std::nullopt;
}

} // namespace lastrivet::ui
