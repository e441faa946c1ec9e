// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/ShortcutSheet.h"

#include "ui/bench/BenchView.h"
#include "ui/shell/PageList.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/Overlay.h"

#include <QAction>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QShortcut>
#include <QStringList>
#include <QVBoxLayout>

#include <algorithm>

namespace lastrivet::ui {

namespace {

constexpr int top = 48;
constexpr int edge = 16;

} // namespace

ShortcutSheet::ShortcutSheet(QWidget *parent)
    : QFrame(parent)
    , m_area(new QScrollArea(this))
    , m_place(new QWidget(m_area))
    , m_grid(new QGridLayout(m_place))
{
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Keys"));
    m_area->setWidget(m_place);
    m_area->setWidgetResizable(true);
    m_area->setFocusPolicy(Qt::NoFocus);
    m_area->setFrameShape(QFrame::NoFrame);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_area);
    keepPlaced(*this, [this] { fit(); });
    hide();
}

void ShortcutSheet::open(const std::vector<QAction *> &commands, const QWidget *page)
{
    // While it is open, it also gets the key that opens it.
    if (!isHidden()) {
        leave();
        return;
    }
    m_before = window()->focusWidget();
    m_lines.clear();
    for (const PageDescription &description : pageList())
        addLine(tr("Ctrl+%1").arg(description.key()), description.name());
    for (const QAction *action : commands) {
        if (!action->shortcut().isEmpty())
            addLine(action->shortcut().toString(QKeySequence::NativeText), action->iconText());
    }
    if (page) {
        addKeysOf(*page);
        addTold(BenchView::keys());
    }
    addLine(tr("Enter"), tr("Go to the record of a row"));
    addLine(tr("Space"), tr("Press the button of a row"));
    addLine(tr("Menu, Shift+F10"), tr("What can be done with a row"));
    addLine(tr("Up, Down"), tr("A day later or earlier, in a field for days"));
    addLine(tr("Ctrl+Enter"), tr("Record what a form says"));
    addLine(tr("Esc"), tr("Leave a form, a closing, this sheet"));
    fit();
    show();
    raise();
    setFocus();
}

/// The page's own shortcuts, which are in no menu, as far as they say what they do.
void ShortcutSheet::addKeysOf(const QWidget &page)
{
    for (const QShortcut *shortcut : page.findChildren<QShortcut *>()) {
        const auto *where = qobject_cast<const QWidget *>(shortcut->parent());
        if (where && where->isVisible() && !shortcut->whatsThis().isEmpty())
            addLine(shortcut->key().toString(QKeySequence::NativeText), shortcut->whatsThis());
    }
    for (const QWidget *place : page.findChildren<QWidget *>()) {
        if (place->isVisible())
            addTold(place->property(toldKeys).toStringList());
    }
}

void ShortcutSheet::addTold(const QStringList &told)
{
    for (qsizetype i = 0; i + 1 < told.size(); i += 2)
        addLine(told[i], told[i + 1]);
}

void ShortcutSheet::addLine(const QString &keys, const QString &words)
{
    const Line line{keys, words};
    // Two lists of a page may have the same key for the same thing.
    if (std::ranges::find(m_lines, line) == m_lines.end())
        m_lines.push_back(line);
}

/// As many columns as the window's height requires and its width allows; the rest can be scrolled
/// to.
void ShortcutSheet::fit()
{
    const QSize room = parentWidget()->size() - QSize(2 * edge, top + edge);
    const int lineHeight = fontMetrics().height() + m_grid->verticalSpacing();
    const int count = int(m_lines.size());
    lay(std::clamp((room.height() - 2 * edge) / std::max(1, lineHeight), 1, count));
    const int columns = m_grid->columnCount() / 2;
    if (const int width = m_place->sizeHint().width(); width > room.width()) {
        const int fewer = std::max(1, columns * room.width() / width);
        lay((count + fewer - 1) / fewer);
    }
    const QSize wanted = m_place->sizeHint() + QSize(2 * frameWidth(), 2 * frameWidth());
    const bool isScrolled = wanted.height() > room.height();
    const int bar = isScrolled ? m_area->verticalScrollBar()->sizeHint().width() : 0;
    resize((wanted + QSize(bar, 0)).boundedTo(room));
    move((parentWidget()->width() - width()) / 2, top);
    m_area->verticalScrollBar()->setValue(0);
}

void ShortcutSheet::lay(int linesPerColumn)
{
    delete m_grid;
    qDeleteAll(m_place->findChildren<QLabel *>());
    m_grid = new QGridLayout(m_place);
    m_grid->setContentsMargins(24, 16, 24, 16);
    m_grid->setHorizontalSpacing(16);
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const int row = int(i) % linesPerColumn;
        const int column = 2 * (int(i) / linesPerColumn);
        m_grid->addWidget(heading(m_lines[i].keys, m_place), row, column);
        m_grid->addWidget(new QLabel(m_lines[i].words, m_place), row, column + 1);
    }
    for (QLabel *label : m_place->findChildren<QLabel *>())
        label->show();
}

/// Gives the focus back to where it was; hiding alone would move it to any widget.
void ShortcutSheet::leave()
{
    if (m_before && m_before->isVisible())
        m_before->setFocus();
    hide();
}

void ShortcutSheet::keyPressEvent(QKeyEvent *event)
{
    QScrollBar *bar = m_area->verticalScrollBar();
    const int key = event->key();
    if (key == Qt::Key_Escape)
        leave();
    else if (key == Qt::Key_Down || key == Qt::Key_Up)
        bar->triggerAction(key == Qt::Key_Down ? QScrollBar::SliderSingleStepAdd
                                               : QScrollBar::SliderSingleStepSub);
    else if (key == Qt::Key_PageDown || key == Qt::Key_PageUp)
        bar->triggerAction(key == Qt::Key_PageDown ? QScrollBar::SliderPageStepAdd
                                                   : QScrollBar::SliderPageStepSub);
    else
        QFrame::keyPressEvent(event);
}

void ShortcutSheet::focusOutEvent(QFocusEvent *event)
{
    QFrame::focusOutEvent(event);
    hide();
}

} // namespace lastrivet::ui
