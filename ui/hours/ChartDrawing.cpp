// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/ChartDrawing.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QEvent>
#include <QFontMetricsF>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QPainter>
#include <QtCharts/QAreaSeries>
#include <QtCharts/QBarCategoryAxis>
#include <QtCharts/QBarSet>
#include <QtCharts/QChart>
#include <QtCharts/QChartView>
#include <QtCharts/QDateTimeAxis>
#include <QtCharts/QHorizontalBarSeries>
#include <QtCharts/QLegend>
#include <QtCharts/QLegendMarker>
#include <QtCharts/QLineSeries>
#include <QtCharts/QValueAxis>

#include <algorithm>

namespace lastrivet::ui {

using print::ChartLook;
using print::ChartPlan;

namespace {

constexpr qint64 millisecondsPerDay = 86'400'000;
constexpr qsizetype longestName = 24;
/// Shorter spans are labelled by days, longer ones by months.
constexpr double shortSpan = 200;

QString shortened(const QString &name)
{
    return name.size() > longestName ? name.left(longestName - 1) + QStringLiteral("…") : name;
}

/// Names that no two of them share: an axis drops one that it has, and what stands behind it would
/// go by another's. A space without width tells them apart, and nobody sees it.
QStringList apart(const QStringList &names)
{
    QStringList unique;
    for (QString name : names) {
        while (unique.contains(name))
            name += QChar(0x200B);
        unique << name;
    }
    return unique;
}

/// Noon, which is the same day in every zone of this computer.
qreal onAxis(double day)
{
    return day * double(millisecondsPerDay) + double(millisecondsPerDay) / 2;
}

void style(QAbstractAxis &axis, const ChartInk &ink)
{
    axis.setLabelsFont(ink.font);
    axis.setLabelsColor(ink.quiet);
    axis.setLinePen(QPen(ink.quiet, 1));
    axis.setGridLinePen(QPen(ink.grid, 1));
    axis.setTitleFont(ink.font);
    axis.setTitleBrush(ink.quiet);
}

QLineSeries *lineOf(const std::vector<QPointF> &points, QObject *parent)
{
    auto *line = new QLineSeries(parent);
    QList<QPointF> onAxes;
    for (const QPointF &point : points)
        onAxes.append({onAxis(point.x()), point.y()});
    line->replace(onAxes);
    return line;
}

/// Builds the series of one plan into a chart.
class Drawing {
public:
    Drawing(const ChartPlan &plan, const ChartInk &ink, QChart &chart)
        : m_plan(plan)
        , m_ink(ink)
        , m_chart(chart)
    {
    }

    void addBars()
    {
        auto *series = new QHorizontalBarSeries(&m_chart);
        QStringList names;
        // The axis begins at the bottom.
        for (auto name = m_plan.names.rbegin(); name != m_plan.names.rend(); ++name)
            names << shortened(*name);
        double most = 0;
        for (auto bars = m_plan.bars.rbegin(); bars != m_plan.bars.rend(); ++bars) {
            auto *set = new QBarSet(bars->name, series);
            for (auto hours = bars->hours.rbegin(); hours != bars->hours.rend(); ++hours) {
                set->append(*hours);
                most = std::max(most, *hours);
            }
            set->setBrush(m_ink.brush(bars->look));
            set->setPen(QPen(m_ink.text, 1));
            series->append(set);
        }
        series->setBarWidth(0.7);
        m_chart.addSeries(series);
        auto *categories = new QBarCategoryAxis(&m_chart);
        categories->append(apart(names));
        categories->setGridLineVisible(false);
        attach(*series, *categories, Qt::AlignLeft);
        attach(*series, *hoursAxis(most), Qt::AlignBottom);
        m_chart.legend()->setVisible(m_plan.bars.size() > 1);
        // The order of the sets is that of the bars from below.
        m_chart.legend()->setReverseMarkers(true);
    }

    void addCurves()
    {
        auto *days = new QDateTimeAxis(&m_chart);
        auto *hours = hoursAxis(mostHours());
        m_chart.addAxis(days, Qt::AlignBottom);
        m_chart.addAxis(hours, Qt::AlignLeft);
        style(*days, m_ink);
        style(*hours, m_ink);
        for (const auto &band : m_plan.bands)
            addBand(band, *days, *hours);
        for (const auto &curve : m_plan.curves)
            addCurve(curve, *days, *hours);
        const auto [first, last] = span();
        days->setRange(QDateTime::fromMSecsSinceEpoch(qint64(onAxis(first))),
                       QDateTime::fromMSecsSinceEpoch(qint64(onAxis(last))));
        const bool isShort = last - first < shortSpan;
        days->setFormat(isShort ? QStringLiteral("yyyy-MM-dd") : QStringLiteral("yyyy-MM"));
        markAsManyAsFit(*days, isShort ? 3 : 5);
    }

private:
    void attach(QAbstractSeries &series, QAbstractAxis &axis, Qt::Alignment side)
    {
        style(axis, m_ink);
        m_chart.addAxis(&axis, side);
        series.attachAxis(&axis);
    }

    /// More labels than have room are cut, until all of them read the same.
    void markAsManyAsFit(QDateTimeAxis &days, int most)
    {
        static constexpr int fewest = 2;
        constexpr qreal besideThem = 104; // the other axis with its title, and the margins
        constexpr qreal between = 10;
        const QString longest = QStringLiteral("0000-00-00").left(days.format().size());
        const qreal label = QFontMetricsF(m_ink.font).horizontalAdvance(longest) + between;
        const auto mark = [&days, &chart = m_chart, label, most] {
            const qreal room = chart.size().width() - besideThem;
            days.setTickCount(std::clamp(int(room / label), fewest, most));
        };
        days.setTickCount(most);
        QObject::connect(&m_chart, &QChart::geometryChanged, &days, mark);
    }

    QValueAxis *hoursAxis(double most)
    {
        auto *axis = new QValueAxis(&m_chart);
        axis->setRange(0, std::max(most, 1.0));
        axis->setTickCount(5);
        axis->setTitleText(m_plan.unit);
        axis->applyNiceNumbers();
        const double step = axis->max() / std::max(1, axis->tickCount() - 1);
        axis->setLabelFormat(step < 1 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
        return axis;
    }

    void addBand(const ChartPlan::Band &band, QAbstractAxis &days, QAbstractAxis &hours)
    {
        auto *area = new QAreaSeries(&m_chart);
        area->setUpperSeries(lineOf(band.upper, &m_chart));
        area->setLowerSeries(lineOf(band.lower, &m_chart));
        area->setName(band.name);
        area->setBrush(m_ink.brush(band.look));
        area->setPen(m_ink.pen(band.look));
        m_chart.addSeries(area);
        area->attachAxis(&days);
        area->attachAxis(&hours);
    }

    void addCurve(const ChartPlan::Curve &curve, QAbstractAxis &days, QAbstractAxis &hours)
    {
        auto *line = lineOf(curve.points, &m_chart);
        line->setName(curve.name);
        line->setPen(m_ink.pen(curve.look));
        line->setPointsVisible(curve.look == ChartLook::Marked);
        m_chart.addSeries(line);
        line->attachAxis(&days);
        line->attachAxis(&hours);
    }

    template <class Look> void eachPoint(Look &&look) const
    {
        for (const auto &curve : m_plan.curves)
            std::ranges::for_each(curve.points, look);
        for (const auto &band : m_plan.bands)
            std::ranges::for_each(band.upper, look);
    }
    double mostHours() const
    {
        double most = 0;
        eachPoint([&](const QPointF &point) { most = std::max(most, point.y()); });
        return most;
    }
    std::pair<double, double> span() const
    {
        double first = 1e9;
        double last = -1e9;
        eachPoint([&](const QPointF &point) {
            first = std::min(first, point.x());
            last = std::max(last, point.x());
        });
        return {first, last};
    }

    const ChartPlan &m_plan;
    const ChartInk &m_ink;
    QChart &m_chart;
};

/// Curves are told by their lines: in squares of one colour they would look alike. Bars and bands
/// are told by their filling, which only a square shows.
void markAsDrawn(const QLegend &legend)
{
    for (QLegendMarker *marker : legend.markers())
        marker->setShape(marker->type() == QLegendMarker::LegendMarkerTypeXY
                             ? QLegend::MarkerShapeFromSeries
                             : QLegend::MarkerShapeRectangle);
}

} // namespace

std::unique_ptr<QChart> drawn(const ChartPlan &plan, const ChartInk &ink)
{
    auto chart = std::make_unique<QChart>();
    chart->setBackgroundBrush(ink.ground);
    chart->setBackgroundPen(Qt::NoPen);
    chart->setBackgroundRoundness(0);
    chart->setMargins(QMargins(4, 4, 12, 4));
    chart->layout()->setContentsMargins(0, 0, 0, 0);
    chart->setAnimationOptions(QChart::NoAnimation);
    chart->legend()->setAlignment(Qt::AlignTop);
    chart->legend()->setFont(ink.font);
    chart->legend()->setLabelColor(ink.text);
    chart->legend()->setShowToolTips(true);
    Drawing drawing(plan, ink, *chart);
    if (!plan.bars.empty())
        drawing.addBars();
    else if (!plan.isEmpty())
        drawing.addCurves();
    markAsDrawn(*chart->legend());
    return chart;
}

QPicture recorded(const ChartPlan &plan, const ChartInk &ink, QSize size)
{
    QChartView view(drawn(plan, ink).release());
    view.setFrameShape(QFrame::NoFrame);
    view.resize(size);
    view.setRenderHint(QPainter::Antialiasing);
    view.ensurePolished();
    // A view that is never shown is not told its size.
    view.chart()->resize(size);
    view.chart()->layout()->activate();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    QPicture picture;
    QPainter painter(&picture);
    view.scene()->render(&painter, QRectF(QPointF(), size), QRectF(QPointF(), size));
    return picture;
}

} // namespace lastrivet::ui
