// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/Unfinished.h"

#include "ui/widgets/SheetBox.h"

#include <QAbstractButton>
#include <QAbstractItemModel>
#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollArea>
#include <QStackedWidget>

#include <utility>

namespace lastrivet::ui {

namespace {

/// Put away by the program; a widget that was never shown yet is not.
bool isPutAway(const QWidget &widget)
{
    return widget.testAttribute(Qt::WA_WState_Hidden) &&
           widget.testAttribute(Qt::WA_WState_ExplicitShowHide);
}

/// Rows that were taken out wait to be deleted, put away with all that is in them.
bool isPutAwayIn(const QWidget &form, const QWidget &field)
{
    for (const QWidget *outer = &field; outer && outer != &form; outer = outer->parentWidget()) {
        if (isPutAway(*outer))
            return true;
    }
    return false;
}

void addRows(const QAbstractItemModel &model, const QModelIndex &parent, QStringList &all)
{
    for (int row = 0; row < model.rowCount(parent); ++row) {
        for (int column = 0; column < model.columnCount(parent); ++column) {
            const QModelIndex cell = model.index(row, column, parent);
            all.append(cell.data(Qt::EditRole).toString());
            all.append(QString::number(cell.data(Qt::CheckStateRole).toInt()));
        }
        addRows(model, model.index(row, 0, parent), all);
    }
}

void addContent(const QWidget &field, QStringList &all)
{
    if (const auto *line = qobject_cast<const QLineEdit *>(&field))
        all.append(line->text());
    else if (const auto *box = qobject_cast<const QComboBox *>(&field))
        all.append(box->currentText());
    else if (const auto *text = qobject_cast<const QPlainTextEdit *>(&field))
        all.append(text->toPlainText());
    else if (const auto *sheet = qobject_cast<const SheetBox *>(&field))
        all.append(sheet->file());
    else if (const auto *tick = qobject_cast<const QAbstractButton *>(&field)) {
        if (tick->isCheckable())
            all.append(QString::number(tick->isChecked()));
    } else if (const auto *view = qobject_cast<const QAbstractItemView *>(&field)) {
        if (view->model())
            addRows(*view->model(), {}, all);
    }
}

} // namespace

bool Unfinished::isBegun() const
{
    return !m_isLeft && (m_isParked || !isPutAway(*this)) && contents() != m_noted;
}

QStringList Unfinished::contents() const
{
    QStringList all;
    for (const QWidget *field : findChildren<QWidget *>()) {
        // The list that a box drops down is a window of its own.
        if (field->window() == window() && !isPutAwayIn(*this, *field))
            addContent(*field, all);
    }
    return all;
}

void Unfinished::noteFields()
{
    m_noted = contents();
    m_isLeft = false;
    m_isParked = false;
}

void Unfinished::noteLeft()
{
    m_isLeft = true;
    m_isParked = false;
}

QString Unfinished::heldBackWords() const
{
    return tr("What is begun here is not kept. Keep it, press Escape to drop it, or do the same "
              "once more to leave without it.");
}

void Unfinished::park()
{
    m_isParked = isBegun();
    hide();
}

void Unfinished::bringBack()
{
    if (std::exchange(m_isParked, false))
        show();
}

QWidget *Unfinished::firstField()
{
    if (QWidget *last = focusWidget(); last && last != this && last->isVisibleTo(this))
        return last;
    for (QWidget *field = nextInFocusChain(); field && field != this;
         field = field->nextInFocusChain()) {
        if (isAncestorOf(field) && (field->focusPolicy() & Qt::TabFocus) && field->isEnabled() &&
            field->isVisibleTo(this))
            return field;
    }
    return this;
}

void Unfinished::takeKeyboard()
{
    if (m_isParked)
        Q_EMIT wanted();
    for (QWidget *inner = this; inner && !inner->isWindow(); inner = inner->parentWidget()) {
        if (auto *stack = qobject_cast<QStackedWidget *>(inner->parentWidget()))
            stack->setCurrentWidget(inner);
    }
    QWidget *first = firstField();
    first->setFocus();
    for (QWidget *outer = parentWidget(); outer && !outer->isWindow();
         outer = outer->parentWidget()) {
        if (auto *area = qobject_cast<QScrollArea *>(outer))
            area->ensureWidgetVisible(first);
    }
}

} // namespace lastrivet::ui
