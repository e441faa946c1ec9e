// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/today/HoursPanel.h"

#include "ui/convert/QtText.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Layouts.h"
#include "ui/widgets/WeekBars.h"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>

namespace lastrivet::ui {

namespace {

/// Lines that are longer are hard to read.
constexpr int longestLine = 560;

} // namespace

HoursPanel::HoursPanel(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_figures{}
    , m_bars(new WeekBars(theme, this))
    , m_forecast(new QLabel(this))
    , m_more(new QPushButton(tr("All hours"), this))
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
    m_forecast->setWordWrap(true);
    m_forecast->setMaximumWidth(longestLine);
    m_more->setProperty("flat", true);
    lines->addWidget(m_forecast, 4, 0, 1, 4);
    lines->addWidget(m_more, 4, 4);
    connect(m_more, &QPushButton::clicked, this, &HoursPanel::hoursWanted);
    showForecast({});
}

void HoursPanel::showForecast(const QString &range)
{
    m_forecast->setText(range);
    m_forecast->setVisible(!range.isEmpty());
    m_more->setVisible(!range.isEmpty());
}

void HoursPanel::show(const today::Hours &hours)
{
    const Minutes sums[] = {hours.this_week, hours.this_month, hours.in_all};
    for (int i = 0; i < 3; ++i)
        m_figures[i]->setText(hoursText(sums[i]));
    m_bars->show(hours.weeks);
}

} // namespace lastrivet::ui
