// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/hours/ChartDrawing.h"

#include <QCoreApplication>
#include <QEvent>
#include <QGraphicsScene>
#include <QGraphicsTextItem>
#include <QtCharts/QBarCategoryAxis>
#include <QtCharts/QChart>
#include <QtCharts/QChartView>
#include <QtCharts/QDateTimeAxis>

#include <catch2/catch.hpp>

namespace lastrivet::test {

TEST_CASE("Each bar of a chart keeps its own label, also where two parts have one name")
{
    print::ChartPlan plan;
    plan.names = {QStringLiteral("Rib"), QStringLiteral("Spar"), QStringLiteral("Rib"),
                  QStringLiteral("Rib")};
    plan.bars.push_back({QStringLiteral("Worked"), print::ChartLook::Filled, {4, 3, 2, 1}});
    const auto chart = ui::drawn(plan, ui::ChartInk::onPaper());
    const auto axes = chart->axes(Qt::Vertical);
    REQUIRE(axes.size() == 1);
    auto *labels = qobject_cast<QBarCategoryAxis *>(axes.front());
    REQUIRE(labels);
    QStringList shown = labels->categories();
    REQUIRE(shown.size() == plan.names.size());
    for (QString &label : shown)
        label.remove(QChar(0x200B));
    // From below.
    CHECK(shown == QStringList{QStringLiteral("Rib"), QStringLiteral("Rib"), QStringLiteral("Spar"),
                               QStringLiteral("Rib")});
}

TEST_CASE("A chart marks no more months than it has room to name")
{
    print::ChartPlan plan;
    plan.unit = QStringLiteral("Hours");
    plan.curves.push_back({QStringLiteral("Worked"),
                           print::ChartLook::Line,
                           {QPointF(19700, 0), QPointF(20600, 900)}});
    const auto marks = [&](int width) {
        QChartView view(ui::drawn(plan, ui::ChartInk::onPaper()).release());
        view.chart()->resize(width, 240);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
        for (const QGraphicsItem *item : view.scene()->items()) {
            const auto *text = qgraphicsitem_cast<const QGraphicsTextItem *>(item);
            const QString words = text ? text->toPlainText() : QString();
            CHECK_FALSE(words.endsWith(QStringLiteral("...")));
            CHECK_FALSE(words.endsWith(QStringLiteral("…")));
        }
        const auto axes = view.chart()->axes(Qt::Horizontal);
        const auto *days = axes.isEmpty() ? nullptr : qobject_cast<QDateTimeAxis *>(axes.front());
        return days ? days->tickCount() : 0;
    };
    CHECK(marks(900) == 5);
    const int few = marks(280);
    CHECK(few < 5);
    CHECK(few >= 2);
}

} // namespace lastrivet::test
