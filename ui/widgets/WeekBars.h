// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/Today.h"

#include <QWidget>

#include <vector>

namespace lastrivet::ui {

class Theme;

/// A bar for the hours of each week, work done again hatched, the running week in outline.
class WeekBars final : public QWidget {
    Q_OBJECT

public:
    explicit WeekBars(const Theme &theme, QWidget *parent = nullptr);

    void show(std::vector<today::WeekHours> weeks);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    bool event(QEvent *event) override;

private:
    Minutes most() const;
    bool hasRework() const;
    QRectF plot() const;
    QRectF bar(std::size_t week) const;
    QString words(const today::WeekHours &week) const;
    void paintBar(QPainter &painter, std::size_t week) const;
    void paintAxis(QPainter &painter) const;

    const Theme &m_theme;
    std::vector<today::WeekHours> m_weeks;
};

} // namespace lastrivet::ui
