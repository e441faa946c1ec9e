// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/HoursPanel.h"

#include "ui/convert/QtText.h"
#include "ui/widgets/Layouts.h"

#include <QGridLayout>
#include <QLabel>

namespace lastrivet::ui {

HoursPanel::HoursPanel(QWidget *parent)
    : QWidget(parent)
    , m_figures{}
{
    const QString words[] = {tr("this week"), tr("this month"), tr("in all")};
    auto *lines = new QGridLayout(this);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setHorizontalSpacing(12);
    lines->setVerticalSpacing(4);
    lines->setColumnStretch(1, 1);
    lines->addWidget(heading(tr("Hours"), this), 0, 0, 1, 2);
    for (int i = 0; i < 3; ++i) {
        m_figures[i] = new QLabel(this);
        lines->addWidget(m_figures[i], i + 1, 0, Qt::AlignRight);
        lines->addWidget(new QLabel(words[i], this), i + 1, 1);
    }
}

void HoursPanel::show(const today::Hours &hours)
{
    const Minutes sums[] = {hours.this_week, hours.this_month, hours.in_all};
    for (int i = 0; i < 3; ++i)
        m_figures[i]->setText(hoursText(sums[i]));
}

} // namespace lastrivet::ui
