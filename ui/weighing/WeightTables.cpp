// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeightTables.h"

#include "ui/convert/QtText.h"
#include "ui/print/EnvelopeDrawing.h"
#include "ui/weighing/WeightText.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

using packet::WeightReport;

QString tr(const char *text)
{
    return QCoreApplication::translate("Weighing", text);
}

QString within(const std::optional<bool> &isWithin)
{
    if (!isWithin)
        return tr("no limits on record");
    return *isWithin ? tr("within the limits") : tr("OUTSIDE the limits");
}

FigureRow sumRow(const QString &sign, const QString &name, const balance::Balance &sum,
                 balance::Units units, const QString &limits)
{
    FigureRow row;
    row.cells = {sign, name, weightText(sum.weight, units.weight), armText(sum.cg, units.arm),
                 sum.percent_mac ? plainNumber(*sum.percent_mac, 1) : QString(), limits};
    return row;
}

QString loadsIn(const WeightReport &report, const balance::Loading &loading)
{
    QStringList lines;
    for (std::size_t i = 0; i < report.loads.size(); ++i)
        lines << tr("%1 %2").arg(toQt(report.loads[i].what),
                                 weightText(loading.weights[i], report.units.weight));
    return lines.join(QStringLiteral(", "));
}

void addLine(FigureTable &table, const balance::Line &line, balance::Units units)
{
    FigureRow row;
    row.cells = {toQt(line.item.name),
                 line.kind == balance::Line::Kind::Fitted ? tr("fitted since") : tr("removed since"),
                 weightText(line.item.weight, units.weight), armText(line.item.arm, units.arm),
                 tr("in the sum")};
    table.rows.push_back(row);
}

} // namespace

FigureTable changesTable(const WeightReport &report)
{
    FigureTable table{{}, {tr("What"), tr("How"), tr("Weight"), tr("Arm"), tr("Counted")}, {}};
    if (report.empty) {
        for (const auto &line : report.empty->lines) {
            if (line.kind == balance::Line::Kind::Fitted ||
                line.kind == balance::Line::Kind::Removed)
                addLine(table, line, report.units);
        }
    }
    for (const auto &effect : report.effects) {
        FigureRow row;
        row.cells = {toQt(effect.title), dateText(effect.when),
                     effect.weight ? weightText(*effect.weight, report.units.weight)
                                   : tr("not said"),
                     effect.arm ? armText(*effect.arm, report.units.arm) : tr("not said"),
                     effect.is_after ? tr("not in the sum: weigh again, or enter equipment")
                                     : tr("weighed with it")};
        row.isMain = effect.is_after;
        table.rows.push_back(row);
    }
    return table;
}

FigureTable loadingTable(const WeightReport &report)
{
    FigureTable table{tr("Loading and limits"),
                      {QString(), tr("Loading"), tr("Weight"), tr("Centre of gravity"),
                       tr("% MAC"), tr("Limits")},
                      {}};
    if (report.empty) {
        auto sum = report.empty->sum;
        sum.percent_mac = report.percent_mac;
        table.rows.push_back(sumRow(QStringLiteral("E"), tr("Empty aeroplane"), sum, report.units,
                                    QString()));
    }
    for (std::size_t i = 0; i < report.cases.size(); ++i) {
        const auto &loading = report.cases[i];
        const QString sign = print::signOfCase(i);
        if (loading.refusal)
            table.rows.push_back({{sign, toQt(loading.name), {}, {}, {},
                                   inWords(*loading.refusal)}});
        else
            table.rows.push_back(sumRow(sign, toQt(loading.name), loading.sum, report.units,
                                        within(loading.is_within)));
    }
    if (!report.extremes)
        return table;
    const auto &[forward, aft] = *report.extremes;
    table.rows.push_back(
        sumRow(QStringLiteral("F"), tr("Farthest forward: %1").arg(loadsIn(report, forward)),
               forward.sum, report.units, within(report.forward_is_within)));
    table.rows.push_back(sumRow(QStringLiteral("A"),
                                tr("Farthest aft: %1").arg(loadsIn(report, aft)), aft.sum,
                                report.units, within(report.aft_is_within)));
    for (auto row = table.rows.end() - 2; row != table.rows.end(); ++row)
        row->isMain = true;
    return table;
}

} // namespace lastrivet::ui
