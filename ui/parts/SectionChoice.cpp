// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionChoice.h"

#include "ui/widgets/Flow.h"

#include <QButtonGroup>
#include <QLocale>
#include <QPushButton>

namespace lastrivet::ui {

SectionChoice::SectionChoice(QWidget *parent)
    : QWidget(parent)
    , m_buttons(new QButtonGroup(this))
{
    new Flow(this);
    // A dozen of them have to fit into two lines.
    setStyleSheet(QStringLiteral("QPushButton { padding: 3px 6px; }"
                                 "QPushButton:focus { padding: 2px 5px; }"));
    setAccessibleName(tr("Sections"));
    connect(m_buttons, &QButtonGroup::idToggled, this, [this](int section, bool isChosen) {
        if (!isChosen)
            return;
        // A click leaves the keyboard in the list; from another section it comes along.
        const auto *focused = qobject_cast<QAbstractButton *>(window()->focusWidget());
        if (focused && focused->group() == m_buttons)
            m_buttons->button(section)->setFocus();
        Q_EMIT chosenChanged(section);
    });
}

void SectionChoice::add(const QString &title)
{
    auto *button = new QPushButton(title, this);
    button->setCheckable(true);
    button->setFocusPolicy(Qt::TabFocus);
    m_buttons->addButton(button, int(m_titles.size()));
    m_titles.append(title);
    layout()->addWidget(button);
}

void SectionChoice::setCount(int section, int count)
{
    const QString title = m_titles[section];
    m_buttons->button(section)->setText(
        count > 0 ? tr("%1 %2").arg(title, QLocale().toString(count)) : title);
}

void SectionChoice::setCount(int section, int count, int open)
{
    if (open == count) {
        setCount(section, count);
        return;
    }
    const QLocale locale;
    m_buttons->button(section)->setText(
        tr("%1 %2 open of %3")
            .arg(m_titles[section], locale.toString(open), locale.toString(count)));
}

void SectionChoice::setOffered(int section, bool isOffered)
{
    m_buttons->button(section)->setVisible(isOffered);
}

int SectionChoice::chosen() const
{
    return m_buttons->checkedId();
}

void SectionChoice::choose(int section)
{
    m_buttons->button(section)->setChecked(true);
}

} // namespace lastrivet::ui
