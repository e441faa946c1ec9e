// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/photos/MarkEditor.h"

#include "ui/convert/QtText.h"

#include <algorithm>
#include <cmath>

namespace lastrivet::ui {

namespace {

constexpr int restMilliseconds = 700;
/// A stroke shorter than this was a click.
constexpr double shortest = 0.01;

QPointF onPicture(const QPointF &point)
{
    return {std::clamp(point.x(), 0.0, 1.0), std::clamp(point.y(), 0.0, 1.0)};
}

std::vector<double> numbers(std::initializer_list<QPointF> points)
{
    std::vector<double> list;
    for (const QPointF &point : points) {
        const QPointF place = onPicture(point);
        list.push_back(place.x());
        list.push_back(place.y());
    }
    return list;
}

/// The mark as large as one draws it to point at a rivet or to ring a rib.
Media::Annotation usual(AnnotationShape shape, const QPointF &at)
{
    switch (shape) {
    case AnnotationShape::Arrow:
        return {shape, numbers({at + QPointF(-0.12, 0.12), at}), {}};
    case AnnotationShape::Circle:
        return {shape, numbers({at, at + QPointF(0.1, 0)}), {}};
    case AnnotationShape::Text:
        break;
    }
    return {shape, numbers({at}), {}};
}

} // namespace

MarkEditor::MarkEditor(QObject *parent)
    : QObject(parent)
{
    m_untold.setSingleShot(true);
    connect(&m_untold, &QTimer::timeout, this, &MarkEditor::tellNow);
}

void MarkEditor::show(const std::vector<Media::Annotation> &marks)
{
    flush();
    if (m_marks == marks)
        return;
    m_marks = marks;
    m_isDragging = false;
    choose(std::min(m_chosen, int(m_marks.size()) - 1));
    Q_EMIT looked();
}

/// True for words that were begun and not written: nobody keeps those.
bool MarkEditor::isWordless(int mark) const
{
    return mark >= 0 && mark < int(m_marks.size()) &&
           m_marks[std::size_t(mark)].shape == AnnotationShape::Text &&
           m_marks[std::size_t(mark)].text.empty();
}

void MarkEditor::choose(int mark)
{
    if (mark == m_chosen)
        return;
    flush();
    if (isWordless(m_chosen)) {
        m_marks.erase(m_marks.begin() + m_chosen);
        mark -= mark > m_chosen ? 1 : 0;
    }
    m_chosen = mark;
    Q_EMIT chosenChanged();
    Q_EMIT looked();
}

bool MarkEditor::chooseNext(int by)
{
    const int count = int(m_marks.size());
    const int next = m_chosen < 0 ? (by > 0 ? 0 : count - 1) : m_chosen + by;
    choose(next >= 0 && next < count ? next : -1);
    return m_chosen >= 0;
}

void MarkEditor::begin(AnnotationShape shape, const QPointF &at)
{
    const bool isPlace = shape == AnnotationShape::Text;
    choose(-1);
    m_marks.push_back({shape, isPlace ? numbers({at}) : numbers({at, at}), {}});
    choose(int(m_marks.size()) - 1);
    m_grip = {m_chosen, isPlace ? -1 : 1};
    m_from = at;
    m_isDragging = true;
    m_isNew = true;
    m_hasMoved = false;
}

void MarkEditor::take(const Grip &grip, const QPointF &at)
{
    choose(grip.mark);
    m_grip = grip;
    m_from = at;
    m_isDragging = true;
    m_isNew = false;
    m_hasMoved = false;
}

void MarkEditor::drag(const QPointF &to)
{
    if (!m_isDragging)
        return;
    move(m_marks[std::size_t(m_grip.mark)], m_grip.point, to - m_from);
    m_from = to;
    m_hasMoved = true;
    Q_EMIT looked();
}

void MarkEditor::release()
{
    if (!m_isDragging)
        return;
    m_isDragging = false;
    Media::Annotation &mark = m_marks[std::size_t(m_grip.mark)];
    const std::vector<double> &at = mark.points;
    if (m_isNew && at.size() == 4 && std::hypot(at[2] - at[0], at[3] - at[1]) < shortest)
        mark = usual(mark.shape, {at[0], at[1]});
    Q_EMIT looked();
    if (m_isNew || m_hasMoved)
        tellNow();
}

void MarkEditor::add(AnnotationShape shape, const QPointF &around)
{
    choose(-1);
    m_marks.push_back(usual(shape, around));
    choose(int(m_marks.size()) - 1);
    Q_EMIT looked();
    tellNow();
}

/// Moves as far as the picture goes: a whole mark keeps its form at the edge.
void MarkEditor::move(Media::Annotation &mark, int point, const QPointF &by)
{
    const auto begin = point < 0 ? 0 : std::size_t(point) * 2;
    const auto end = point < 0 ? mark.points.size() : begin + 2;
    double steps[] = {by.x(), by.y()};
    for (std::size_t i = begin; i < end; ++i)
        steps[i % 2] = std::clamp(steps[i % 2], -mark.points[i], 1 - mark.points[i]);
    for (std::size_t i = begin; i < end; ++i)
        mark.points[i] = std::clamp(mark.points[i] + steps[i % 2], 0.0, 1.0);
}

void MarkEditor::nudge(const QPointF &by, bool farPointAlone)
{
    if (m_chosen < 0)
        return;
    Media::Annotation &mark = m_marks[std::size_t(m_chosen)];
    move(mark, farPointAlone && mark.points.size() >= 4 ? 1 : -1, by);
    m_untold.start(restMilliseconds);
    Q_EMIT looked();
}

void MarkEditor::setWords(const QString &words)
{
    if (m_chosen < 0 || m_marks[std::size_t(m_chosen)].text == toStd(words))
        return;
    m_marks[std::size_t(m_chosen)].text = toStd(words);
    Q_EMIT looked();
    tellNow();
}

void MarkEditor::removeChosen()
{
    if (m_chosen < 0)
        return;
    m_marks.erase(m_marks.begin() + m_chosen);
    m_chosen = -1;
    Q_EMIT chosenChanged();
    Q_EMIT looked();
    tellNow();
}

void MarkEditor::tellNow()
{
    m_untold.stop();
    if (!isWordless(m_chosen))
        Q_EMIT edited();
}

void MarkEditor::flush()
{
    if (m_untold.isActive())
        tellNow();
}

} // namespace lastrivet::ui
