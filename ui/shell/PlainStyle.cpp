// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PlainStyle.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QCursor>
#include <QEvent>
#include <QFontMetrics>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTextDocument>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Of a line in a tip.
constexpr int tipLetters = 64;

/// True for the key of undo or redo in a field that has nothing of its own to undo or redo.
bool isOfProject(const QObject &field, const QKeyEvent &key)
{
    const bool isUndo = key.matches(QKeySequence::Undo);
    if (!isUndo && !key.matches(QKeySequence::Redo))
        return false;
    if (const auto *text = qobject_cast<const QPlainTextEdit *>(&field)) {
        const QTextDocument &typed = *text->document();
        return text->isReadOnly() || !(isUndo ? typed.isUndoAvailable() : typed.isRedoAvailable());
    }
    // A combo or spin box gets the keys of its line edit.
    const auto *line = qobject_cast<const QLineEdit *>(&field);
    if (!line)
        line = field.findChild<QLineEdit *>(QString(), Qt::FindDirectChildrenOnly);
    return line && !(isUndo ? line->isUndoAvailable() : line->isRedoAvailable());
}

/// A repeated key press was meant for the widget that had the focus before.
bool isToPress(const QKeyEvent &key)
{
    const bool isEnter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    return isEnter && !(key.modifiers() & ~Qt::KeypadModifier) && !key.isAutoRepeat();
}

template <class... Types> bool isOneOf(QObject *object)
{
    return (qobject_cast<Types *>(object) || ...);
}

} // namespace

PlainStyle::PlainStyle()
    : QProxyStyle(QStringLiteral("Fusion"))
{
}

void PlainStyle::polish(QWidget *widget)
{
    QProxyStyle::polish(widget);
    auto *label = qobject_cast<QLabel *>(widget);
    if (label && label->textFormat() == Qt::AutoText)
        label->setTextFormat(Qt::PlainText);
    if (label && label->inherits("QTipLabel"))
        label->installEventFilter(this);
    if (isOneOf<QAbstractSpinBox, QComboBox, QLineEdit, QPlainTextEdit, QPushButton>(widget))
        widget->installEventFilter(this);
}

int PlainStyle::styleHint(StyleHint hint, const QStyleOption *option, const QWidget *widget,
                          QStyleHintReturn *returned) const
{
    if (hint == SH_ComboBox_AllowWheelScrolling || hint == SH_ItemView_ActivateItemOnSingleClick)
        return 0;
    return QProxyStyle::styleHint(hint, option, widget, returned);
}

bool PlainStyle::eventFilter(QObject *watched, QEvent *event)
{
    switch (event->type()) {
    case QEvent::Wheel:
        return passesBy(watched, event) || QProxyStyle::eventFilter(watched, event);
    case QEvent::Resize:
        if (auto *tip = qobject_cast<QLabel *>(watched))
            narrow(*tip);
        break;
    case QEvent::ShortcutOverride:
        if (!isOfProject(*watched, *static_cast<QKeyEvent *>(event)))
            break;
        // Then the project gets the key.
        event->ignore();
        return true;
    case QEvent::KeyPress:
        if (auto *button = qobject_cast<QPushButton *>(watched);
            button && isToPress(*static_cast<QKeyEvent *>(event))) {
            button->click();
            return true;
        }
        break;
    default:
        break;
    }
    return QProxyStyle::eventFilter(watched, event);
}

/// Qt leaves a text that is not HTML in one line as long as the screen is wide.
void PlainStyle::narrow(QLabel &tip)
{
    const QFontMetrics metrics = tip.fontMetrics();
    const int most = tipLetters * metrics.averageCharWidth();
    const int margins = tip.width() - metrics.size(0, tip.text()).width();
    if (tip.wordWrap() || tip.width() <= most + margins)
        return;
    const QRect lines = metrics.boundingRect(QRect(0, 0, most, QWIDGETSIZE_MAX),
                                             Qt::AlignLeft | Qt::TextWordWrap, tip.text());
    const int width = std::max(most, lines.width()) + std::max(0, margins);
    const int right = tip.x() + tip.width();
    tip.setWordWrap(true);
    tip.resize(width, tip.heightForWidth(width));
    // Where it had no room to the right of the mouse it ends there, however wide it is.
    if (right <= QCursor::pos().x())
        tip.move(right - width, tip.y());
}

/// Ignores the wheel over number boxes without the focus.
bool PlainStyle::passesBy(QObject *watched, QEvent *event)
{
    const auto *box = qobject_cast<const QAbstractSpinBox *>(watched);
    if (!box || box->hasFocus())
        return false;
    // The area around it scrolls instead.
    event->ignore();
    return true;
}

} // namespace lastrivet::ui
