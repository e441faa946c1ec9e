// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

#include <optional>
#include <vector>

namespace lastrivet::ui {

class Theme;

/// One value of a series.
struct PlottedValue {
    double value = 0;
    /// As it is named below the plot: its day.
    QString name;
    bool isOutside = false;
};

/// Values in the order in which they were measured, between the lines of their limits.
class MeasurementPlot final : public QWidget {
    Q_OBJECT

public:
    explicit MeasurementPlot(const Theme &theme, QWidget *parent = nullptr);

    void show(std::vector<PlottedValue> values, std::optional<double> minimum,
              std::optional<double> maximum, const QString &unit);
    QSize sizeHint() const override { return {280, 150}; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    QRectF plot() const;
    QPointF place(std::size_t value) const;
    qreal heightOf(double value) const;
    void paintLimit(QPainter &painter, double limit) const;
    void paintValues(QPainter &painter) const;

    const Theme &m_theme;
    std::vector<PlottedValue> m_values;
    std::optional<double> m_minimum;
    std::optional<double> m_maximum;
    QString m_unit;
    double m_lowest = 0;
    double m_highest = 1;
};

} // namespace lastrivet::ui
