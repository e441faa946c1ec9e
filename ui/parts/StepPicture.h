// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"
#include "core/records/Step.h"
#include "core/steps/Layering.h"

#include <QAbstractScrollArea>
#include <QRectF>

#include <optional>
#include <vector>

namespace lastrivet::ui {

class Session;

/// Which step comes before which: boxes in layers from left to right, joined by lines.
///
/// The arrow keys go along the lines and within a layer; Enter chooses the step in the list.
/// Dragging from one box to another makes the second wait for the first; so does W on the first and
/// then on the second.
class StepPicture final : public QAbstractScrollArea {
    Q_OBJECT

public:
    explicit StepPicture(Session &session, QWidget *parent = nullptr);

    /// Draws the steps of a list, and those elsewhere that they wait for or that wait for them.
    void show(const std::vector<RecordRef> &steps);
    void setCurrent(std::int64_t step);
    Id<Step> current() const;
    /// Where a step is drawn, in the viewport; empty when it is not.
    QRectF boxOf(Id<Step> step) const;

Q_SIGNALS:
    void chosen(qint64 step);

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    bool viewportEvent(QEvent *event) override;

private:
    static constexpr qreal boxWidth = 168;

    QRectF box(std::size_t node) const;
    QPointF centre(const steps::Layering::Place &place) const;
    std::optional<std::size_t> nodeAt(const QPointF &point) const;
    std::optional<std::size_t> nodeOf(Id<Step> step) const;
    void updateBars();
    void paintLines(QPainter &painter) const;
    void paintBox(QPainter &painter, std::size_t node) const;
    void paintTooMany(QPainter &painter) const;
    void go(std::size_t node);
    void goAlong(bool isForward);
    void goWithin(int by);
    void joinFrom();
    QString describe(std::size_t node) const;

    Session &m_session;
    std::vector<Id<Step>> m_steps;
    /// Steps of the list itself; the others are drawn fainter.
    std::vector<bool> m_isOwn;
    steps::Layering m_layering;
    std::optional<std::size_t> m_current;
    /// Where the mouse went down; the boxes may be drawn anew while it is held.
    std::optional<Id<Step>> m_pressed;
    std::optional<Id<Step>> m_earlier;
    QPointF m_pointer;
    bool m_isTooMany = false;
};

} // namespace lastrivet::ui
