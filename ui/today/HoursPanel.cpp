// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/HoursPanel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/WeekBars.h"

#include <QGridLayout>
#include <QLabel>

namespace lastrivet::ui {

HoursPanel::HoursPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_figures{}
    , m_bars(new WeekBars(theme, this))
{
    const QString words[] = {tr("this week"), tr("this month"), tr("in all")};
    auto *lines = new QGridLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setHorizontalSpacing(12);
    lines->setVerticalSpacing(4);
    lines->setColumnStretch(3, 1);
    lines->setColumnMinimumWidth(2, 20);
    lines->addWidget(heading(tr("Hours"), this), 0, 0, 1, 2);
    for (int i = 0; i < 3; ++i) {
        m_figures[i] = new QLabel(this);
        lines->addWidget(m_figures[i], i + 1, 0, Qt::AlignRight);
        lines->addWidget(new QLabel(words[i], this), i + 1, 1);
    }
    lines->addWidget(m_bars, 0, 3, 4, 1);
}

void HoursPanel::show(const today::Hours &hours)
{
    const Minutes sums[] = {hours.this_week, hours.this_month, hours.in_all};
    for (int i = 0; i < 3; ++i)
        m_figures[i]->setText(hoursText(sums[i]));
    m_bars->show(hours.weeks);
}

} // namespace lastrivet::ui
