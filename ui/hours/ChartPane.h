// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/ChartPlan.h"

#include <QWidget>

class QChartView;
class QLabel;

namespace lastrivet::ui {

class Theme;

/// Shows a chart under its title; a screen reader hears its title and summary. The table beside it
/// is for the keyboard.
class ChartPane final : public QWidget {
    Q_OBJECT

public:
    explicit ChartPane(const Theme &theme, QWidget *parent = nullptr);

    void show(print::ChartPlan plan);
    const print::ChartPlan &plan() const { return m_plan; }
    /// Draws it again in the colours of the theme.
    void redraw();

private:
    const Theme &m_theme;
    print::ChartPlan m_plan;
    QLabel *m_title;
    QChartView *m_view;
};

} // namespace lastrivet::ui
