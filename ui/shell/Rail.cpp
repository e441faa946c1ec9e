// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Rail.h"

#include "ui/shell/RailButton.h"
#include "ui/shell/Theme.h"

#include <QAbstractButton>
#include <QButtonGroup>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

namespace lastrivet::ui {

Rail::Rail(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_buttons(new QButtonGroup(this))
{
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 8, 1, 8);
    layout->setSpacing(0);
    for (const PageDescription &page : pageList()) {
        // A gap between the pages for every evening and those that are looked up now and then.
        if (page.id == PageId::Journal)
            layout->addStretch(1);
        auto *button = new RailButton(theme, page.icon, page.name(), this);
        button->setToolTip(tr("%1 (Ctrl+%2)").arg(page.name()).arg(page.key()));
        m_buttons->addButton(button, int(page.id));
        layout->addWidget(button);
    }
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
    connect(m_buttons, &QButtonGroup::idClicked, this,
            [this](int id) { Q_EMIT chosen(PageId(id)); });
}

void Rail::choose(PageId page)
{
    QAbstractButton *shown = m_buttons->button(int(page));
    shown->setChecked(true);
    // Qt leads the Tab key to the button that had it last, whichever page is shown by now.
    for (QAbstractButton *button : m_buttons->buttons())
        button->setFocusPolicy(button == shown ? Qt::TabFocus : Qt::NoFocus);
}

void Rail::setNarrow(bool isNarrow)
{
    for (auto *button : m_buttons->buttons())
        static_cast<RailButton *>(button)->setNarrow(isNarrow);
}

void Rail::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_theme.colours().raised);
    painter.fillRect(width() - 1, 0, 1, height(), m_theme.colours().line);
}

void Rail::keyPressEvent(QKeyEvent *event)
{
    const int key = event->key();
    if (key == Qt::Key_Right || key == Qt::Key_Return || key == Qt::Key_Enter) {
        Q_EMIT entered();
        return;
    }
    const int step = key == Qt::Key_Down ? 1 : key == Qt::Key_Up ? -1 : 0;
    auto *next = m_buttons->button(m_buttons->checkedId() + step);
    if (step == 0 || !next) {
        QWidget::keyPressEvent(event);
        return;
    }
    next->setChecked(true);
    next->setFocus();
    Q_EMIT passed(PageId(m_buttons->id(next)));
}

} // namespace lastrivet::ui
