// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/photos/MarkPainter.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <vector>

namespace lastrivet::ui {

/// Draws, moves and removes the marks of one picture; knows no window. What was done is told once
/// it is finished: when the mouse lets go, or when the keys rest.
class MarkEditor final : public QObject {
    Q_OBJECT

public:
    explicit MarkEditor(QObject *parent = nullptr);

    /// Shows other marks; what was not told yet is told before.
    void show(const std::vector<Media::Annotation> &marks);
    const std::vector<Media::Annotation> &marks() const { return m_marks; }
    int chosen() const { return m_chosen; }
    /// True between a stroke and its telling, and while a mark waits for its words.
    bool isUntold() const { return m_untold.isActive() || m_isDragging || isWordless(m_chosen); }

    void choose(int mark);
    /// Chooses the next or the one before; false past either end, then none is chosen.
    bool chooseNext(int by);

    // Places on the picture, from 0 to 1.
    /// Begins a mark that `drag` gives its size.
    void begin(AnnotationShape shape, const QPointF &at);
    /// Takes hold of a mark or of one of its points.
    void take(const Grip &grip, const QPointF &at);
    void drag(const QPointF &to);
    void release();

    /// Puts a mark of a usual size around a place, chosen: the way of the keyboard.
    void add(AnnotationShape shape, const QPointF &around);
    /// Moves the chosen mark, or its far point alone.
    void nudge(const QPointF &by, bool farPointAlone);
    void setWords(const QString &words);
    void removeChosen();
    /// Tells what was not told yet.
    void flush();

Q_SIGNALS:
    /// Something looks different.
    void looked();
    void chosenChanged();
    /// The marks are as the person wants them kept.
    void edited();

private:
    void move(Media::Annotation &mark, int point, const QPointF &by);
    void tellNow();
    bool isWordless(int mark) const;

    std::vector<Media::Annotation> m_marks;
    int m_chosen = -1;
    Grip m_grip;
    QPointF m_from;
    bool m_isDragging = false;
    bool m_isNew = false;
    bool m_hasMoved = false;
    QTimer m_untold;
};

} // namespace lastrivet::ui
