// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/photos/MarkEditor.h"
#include "ui/photos/Zoom.h"

#include <QPixmap>
#include <QWidget>

#include <optional>

namespace lastrivet::ui {

class Theme;

/// One picture with its marks: zoomed by wheel and keys, moved, drawn upon.
class PictureView final : public QWidget {
    Q_OBJECT

public:
    explicit PictureView(const Theme &theme, QWidget *parent = nullptr);

    /// Another picture, `size` large when all its pixels are there; shown whole.
    void showPicture(const QPixmap &picture, const QSize &size);
    /// The same picture with more pixels.
    void refine(const QPixmap &picture);
    /// Said in place of a picture.
    void showWords(const QString &words);
    /// Marks can be looked at only.
    void setReadOnly(bool isReadOnly) { m_isReadOnly = isReadOnly; }

    MarkEditor &marks() { return m_marks; }
    /// What a press of the mouse draws; nothing means that it takes hold.
    void setTool(std::optional<AnnotationShape> tool);
    std::optional<AnnotationShape> tool() const { return m_tool; }
    /// Puts a mark in the middle of what is seen.
    void addMark(AnnotationShape shape);

    bool isWhole() const { return m_zoom.isWhole(); }
    double scale() const { return m_zoom.scale() * devicePixelRatioF(); }
    void showWhole();
    /// One pixel of the picture on each pixel of the screen.
    void showFullSize();
    void zoomIn();
    void zoomOut();

Q_SIGNALS:
    void stepped(int by);
    void left();
    void toolChanged();
    /// Enlarged beyond the pixels that are there.
    void morePixelsWanted();
    void zoomed();
    /// The words of the chosen mark are to be written.
    void wordsWanted();

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void mouseDoubleClickEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;
    bool focusNextPrevChild(bool next) override;

private:
    MarkPainter painter() const;
    bool zoomKey(int key);
    bool markKey(const QKeyEvent &event);
    bool moveKey(const QKeyEvent &event);
    void zoomAround(double factor, const QPointF &anchor);
    void looksOther();
    void updateCursor(const QPointF &at);

    const Theme &m_theme;
    MarkEditor m_marks;
    Zoom m_zoom;
    QPixmap m_picture;
    QSize m_size;
    QString m_words;
    std::optional<AnnotationShape> m_tool;
    std::optional<QPointF> m_moving;
    bool m_isReadOnly = false;
};

} // namespace lastrivet::ui
