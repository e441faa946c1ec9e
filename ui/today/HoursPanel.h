// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace lastrivet::ui {

class Theme;
class WeekBars;

/// The hours of the week, of the month and in all beside the weeks of half a year, and the hours to
/// go as a range.
class HoursPanel final : public QWidget {
    Q_OBJECT

public:
    explicit HoursPanel(const Theme &theme, QWidget *parent = nullptr);

    void show(const today::Hours &hours);
    /// Empty while it is not known.
    void showForecast(const QString &range);

Q_SIGNALS:
    /// Somebody wants to know more of it.
    void hoursWanted();

private:
    QLabel *m_figures[3];
    WeekBars *m_bars;
    QLabel *m_forecast;
    QPushButton *m_more;
};

} // namespace lastrivet::ui
