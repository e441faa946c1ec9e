// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/ChartPane.h"

#include "ui/hours/ChartDrawing.h"
#include "ui/shell/Theme.h"
#include "ui/widgets/Layouts.h"

#include <QLabel>
#include <QVBoxLayout>
#include <QtCharts/QChart>
#include <QtCharts/QChartView>

#include <memory>

namespace lastrivet::ui {

ChartPane::ChartPane(const Theme &theme, QWidget *parent)
    : QWidget(parent)
    , m_theme(theme)
    , m_title(heading({}, this))
    , m_view(new QChartView(this))
{
    m_title->setWordWrap(true);
    m_view->setFocusPolicy(Qt::NoFocus);
    m_view->setRenderHint(QPainter::Antialiasing);
    m_view->setMinimumSize(200, 180);
    auto *layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(m_title);
    layout->addWidget(m_view, 1);
}

void ChartPane::show(print::ChartPlan plan)
{
    m_plan = std::move(plan);
    m_title->setText(m_plan.title);
    m_view->setAccessibleName(m_plan.title);
    m_view->viewport()->setAccessibleName(m_plan.title);
    m_view->setAccessibleDescription(m_plan.summary);
    setVisible(!m_plan.isEmpty());
    redraw();
}

void ChartPane::redraw()
{
    // The view does not delete the chart that it showed before.
    const std::unique_ptr<QChart> old(m_view->chart());
    m_view->setBackgroundBrush(m_theme.colours().surface);
    m_view->setChart(drawn(m_plan, ChartInk::of(m_theme)).release());
}

} // namespace lastrivet::ui
