// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

class QLabel;

namespace lastrivet::ui {

class Theme;
class WeekBars;

/// The hours of the week, of the month and in all beside the weeks of half a year.
class HoursPanel final : public QWidget {
    Q_OBJECT

public:
    explicit HoursPanel(const Theme &theme, QWidget *parent = nullptr);

    void show(const today::Hours &hours);

private:
    QLabel *m_figures[3];
    WeekBars *m_bars;
};

} // namespace lastrivet::ui
