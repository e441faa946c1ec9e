// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/ShortcutSheet.h"

#include "ui/shell/PageList.h"
#include "ui/widgets/Layouts.h"

#include <QAction>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>

namespace lastrivet::ui {

namespace {

constexpr int linesPerColumn = 12;

} // namespace

ShortcutSheet::ShortcutSheet(QWidget *parent)
    : QFrame(parent)
    , m_lines(new QGridLayout(this))
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Keys"));
    m_lines->setContentsMargins(24, 16, 24, 16);
    m_lines->setHorizontalSpacing(16);
    hide();
}

void ShortcutSheet::open(const std::vector<QAction *> &commands)
{
    clearLayout(*m_lines);
    m_count = 0;
    for (const PageDescription &page : pageList())
        addLine(tr("Ctrl+%1").arg(page.key()), page.name());
    for (const QAction *action : commands) {
        if (!action->shortcut().isEmpty())
            addLine(action->shortcut().toString(QKeySequence::NativeText), action->iconText());
    }
    addLine(tr("Enter"), tr("Go to the record of a row"));
    addLine(tr("Space"), tr("Press the button of a row"));
    addLine(tr("Up, Down"), tr("A day later or earlier, in a field for days"));
    addLine(tr("Ctrl+Enter"), tr("Record what a form says"));
    addLine(tr("Esc"), tr("Leave a form, a closing, this sheet"));
    adjustSize();
    move((parentWidget()->width() - width()) / 2, 48);
    show();
    raise();
    setFocus();
}

void ShortcutSheet::addLine(const QString &keys, const QString &words)
{
    const int row = m_count % linesPerColumn;
    const int column = 2 * (m_count / linesPerColumn);
    m_lines->addWidget(heading(keys, this), row, column);
    m_lines->addWidget(new QLabel(words, this), row, column + 1);
    ++m_count;
}

void ShortcutSheet::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape || event->key() == Qt::Key_F1)
        hide();
    else
        QFrame::keyPressEvent(event);
}

void ShortcutSheet::focusOutEvent(QFocusEvent *event)
{
    QFrame::focusOutEvent(event);
    hide();
}

} // namespace lastrivet::ui
