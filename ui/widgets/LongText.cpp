// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/LongText.h"

#include <QKeyEvent>
#include <QTextDocument>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int fewestLines = 2;
constexpr int mostLines = 8;
constexpr int frame = 20;

} // namespace

LongText::LongText(QWidget *parent)
    : QPlainTextEdit(parent)
{
    setTabChangesFocus(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    document()->setDocumentMargin(2);
    connect(this, &QPlainTextEdit::textChanged, this, &LongText::fit);
}

QSize LongText::sizeHint() const
{
    const int lines = std::clamp(int(document()->size().height()), fewestLines, mostLines);
    return {200, lines * fontMetrics().lineSpacing() + frame};
}

void LongText::fit()
{
    updateGeometry();
}

void LongText::resizeEvent(QResizeEvent *event)
{
    QPlainTextEdit::resizeEvent(event);
    fit();
}

void LongText::focusOutEvent(QFocusEvent *event)
{
    QPlainTextEdit::focusOutEvent(event);
    Q_EMIT finished();
}

void LongText::keyPressEvent(QKeyEvent *event)
{
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && event->modifiers().testFlag(Qt::ControlModifier))
        Q_EMIT finished();
    else
        QPlainTextEdit::keyPressEvent(event);
}

} // namespace lastrivet::ui
