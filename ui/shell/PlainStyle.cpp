// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PlainStyle.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTextDocument>

namespace lastrivet::ui {

namespace {

/// True when the key would take back or do again, and the field has nothing of its own for it.
bool isOfProject(const QObject &field, const QKeyEvent &key)
{
    const bool isUndo = key.matches(QKeySequence::Undo);
    if (!isUndo && !key.matches(QKeySequence::Redo))
        return false;
    if (const auto *text = qobject_cast<const QPlainTextEdit *>(&field)) {
        const QTextDocument &typed = *text->document();
        return text->isReadOnly() || !(isUndo ? typed.isUndoAvailable() : typed.isRedoAvailable());
    }
    // Boxes get the keys of the line in them.
    const auto *line = qobject_cast<const QLineEdit *>(&field);
    if (!line)
        line = field.findChild<QLineEdit *>(QString(), Qt::FindDirectChildrenOnly);
    return line && !(isUndo ? line->isUndoAvailable() : line->isRedoAvailable());
}

/// A key that is held down was meant for what had the keyboard before.
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
    case QEvent::ShortcutOverride:
        if (!isOfProject(*watched, *static_cast<QKeyEvent *>(event)))
            break;
        // With nothing of its own to take back or do again, a field leaves the key to the project.
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

/// Lets the wheel pass by boxes for numbers that nobody types in.
bool PlainStyle::passesBy(QObject *watched, QEvent *event)
{
    const auto *box = qobject_cast<const QAbstractSpinBox *>(watched);
    if (!box || box->hasFocus())
        return false;
    // What lies around it scrolls.
    event->ignore();
    return true;
}

} // namespace lastrivet::ui
