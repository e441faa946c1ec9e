// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/FormRows.h"

#include <QLayoutItem>
#include <QWidget>

namespace lastrivet::ui {

FormRows::FormRows(QWidget *parent)
    : QFormLayout(parent)
{
}

void FormRows::invalidate()
{
    QFormLayout::invalidate();
    // Taking a row out and putting one in come here again.
    if (m_isPuttingIn)
        return;
    m_isPuttingIn = true;
    for (int row = 0; row < rowCount(); ++row) {
        const QLayoutItem *label = itemAt(row, LabelRole);
        const QLayoutItem *field = itemAt(row, FieldRole);
        QWidget *shown = field ? field->widget() : nullptr;
        if (!shown || (label && !label->widget()))
            continue;
        if (isRowVisible(row))
            m_shown.insert(shown);
        else if (m_shown.erase(shown) > 0)
            putInAnew(row, label ? label->widget() : nullptr, *shown);
    }
    m_isPuttingIn = false;
}

void FormRows::putInAnew(int row, QWidget *label, QWidget &field)
{
    const bool isAcross = itemAt(row, SpanningRole) != nullptr;
    const TakeRowResult taken = takeRow(row);
    delete taken.labelItem;
    delete taken.fieldItem;
    // A field without a label stays below the fields, and not across the form.
    if (isAcross)
        insertRow(row, &field);
    else
        insertRow(row, label, &field);
}

} // namespace lastrivet::ui
