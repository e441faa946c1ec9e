// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/FilterLine.h"

#include <QKeyEvent>
#include <QShortcut>

namespace lastrivet::ui {

FilterLine::FilterLine(QWidget *parent)
    : QLineEdit(parent)
{
    setClearButtonEnabled(true);
    // Inactive while the line is not visible, so that each page has its own.
    auto *find = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_F), this);
    find->setWhatsThis(tr("Look for words on this page"));
    connect(find, &QShortcut::activated, this, [this] {
        setFocus(Qt::ShortcutFocusReason);
        selectAll();
    });
}

void FilterLine::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape && !text().isEmpty())
        clear();
    else
        QLineEdit::keyPressEvent(event);
}

} // namespace lastrivet::ui
