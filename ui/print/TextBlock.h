// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Type.h"

#include <QPointF>
#include <QString>
#include <QTextLayout>

#include <memory>

class QPainter;

namespace lastrivet::print {

/// A text broken into lines of one width; words that are too long break anywhere.
class TextBlock {
public:
    TextBlock(const QString &text, Size size, double width, bool isBold = false,
              Qt::Alignment alignment = Qt::AlignLeft);

    int lineCount() const { return m_layout->lineCount(); }
    double lineHeight() const { return m_lineHeight; }
    double height() const { return lineCount() * m_lineHeight; }
    /// Width of the widest line.
    double naturalWidth() const;
    /// Characters of the text in the first lines; at least one line, and no more than there are.
    qsizetype lengthOf(int lines) const;
    void draw(QPainter &painter, QPointF topLeft) const;
    /// Draws `count` lines from line `first`, the first of them at `topLeft`.
    void drawLines(QPainter &painter, QPointF topLeft, int first, int count) const;

private:
    std::unique_ptr<QTextLayout> m_layout;
    double m_lineHeight;
};

/// As much of a text as so many lines hold, at least one, with "…" where it was cut.
TextBlock fitted(const QString &text, Size size, double width, int mostLines, bool isBold = false,
                 Qt::Alignment alignment = Qt::AlignLeft);

} // namespace lastrivet::print
