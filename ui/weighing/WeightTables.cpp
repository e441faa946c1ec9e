// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/weighing/WeightTables.h"

#include "ui/convert/NumberText.h"
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
    row.cells = {sign,
                 name,
                 weightText(sum.weight, units.weight),
                 armText(sum.cg, units.arm),
                 sum.percent_mac ? plainNumber(*sum.percent_mac, 1) : QString(),
                 limits};
    return row;
}

FigureRow loadedRow(const QString &sign, const QString &name, const balance::Balance &sum,
                    balance::Units units, const std::optional<bool> &isWithin)
{
    FigureRow row = sumRow(sign, name, sum, units, within(isWithin));
    row.isMain = isWithin == false;
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
                 line.kind == balance::Line::Kind::Fitted ? tr("fitted since")
                                                          : tr("removed since"),
                 weightText(line.item.weight, units.weight), armText(line.item.arm, units.arm),
                 tr("in the sum")};
    table.rows.push_back(row);
}

QString weightOrNot(const std::optional<double> &weight, balance::Units units)
{
    return weight ? weightText(*weight, units.weight) : tr("not said");
}

QString armOrNot(const std::optional<double> &arm, balance::Units units)
{
    return arm ? armText(*arm, units.arm) : tr("not said");
}

void addNotInSum(FigureTable &table, const WeightReport::EquipmentLine &item, balance::Units units)
{
    FigureRow row;
    row.cells = {toQt(item.name), tr("fitted or removed since"), weightOrNot(item.weight, units),
                 armOrNot(item.arm, units), tr("not in the sum: enter weight and arm")};
    row.isMain = true;
    table.rows.push_back(row);
}

QString counted(WeightReport::Weighed weighed)
{
    switch (weighed) {
    case WeightReport::Weighed::NotYet:
        return tr("not weighed yet");
    case WeightReport::Weighed::In:
        return tr("weighed with it");
    case WeightReport::Weighed::NotIn:
        return tr("not in the sum: weigh again, or enter equipment");
    }
    return {};
}

} // namespace

FigureTable changesTable(const WeightReport &report)
{
    FigureTable table{{}, {tr("What"), tr("When"), tr("Weight"), tr("Arm"), tr("Counted")}, {}};
    if (report.empty) {
        for (const auto &line : report.empty->lines) {
            if (line.kind == balance::Line::Kind::Fitted ||
                line.kind == balance::Line::Kind::Removed)
                addLine(table, line, report.units);
        }
    }
    for (const auto &item : report.not_in_sum)
        addNotInSum(table, item, report.units);
    for (const auto &effect : report.effects) {
        FigureRow row;
        row.cells = {toQt(effect.title), dateText(effect.when),
                     weightOrNot(effect.weight, report.units), armOrNot(effect.arm, report.units),
                     counted(effect.weighed)};
        row.isMain = effect.weighed == WeightReport::Weighed::NotIn;
        table.rows.push_back(row);
    }
    return table;
}

FigureTable loadingTable(const WeightReport &report)
{
    FigureTable table{tr("Loading and limits"),
                      {QString(), tr("Loading"), tr("Weight"), tr("Centre of gravity"), tr("% MAC"),
                       tr("Limits")},
                      {}};
    if (report.empty) {
        auto sum = report.empty->sum;
        sum.percent_mac = report.percent_mac;
        table.rows.push_back(
            sumRow(QStringLiteral("E"), tr("Empty aeroplane"), sum, report.units, QString()));
    }
    for (std::size_t i = 0; i < report.cases.size(); ++i) {
        const auto &loading = report.cases[i];
        const QString sign = print::signOfCase(i);
        if (loading.refusal)
            table.rows.push_back(
                {{sign, toQt(loading.name), {}, {}, {}, inWords(*loading.refusal)}});
        else
            table.rows.push_back(
                loadedRow(sign, toQt(loading.name), loading.sum, report.units, loading.is_within));
    }
    if (!report.extremes)
        return table;
    const auto &[forward, aft] = *report.extremes;
    table.rows.push_back(loadedRow(QStringLiteral("F"),
                                   tr("Farthest forward: %1").arg(loadsIn(report, forward)),
                                   forward.sum, report.units, report.forward_is_within));
    table.rows.push_back(loadedRow(QStringLiteral("A"),
                                   tr("Farthest aft: %1").arg(loadsIn(report, aft)), aft.sum,
                                   report.units, report.aft_is_within));
    return table;
}

} // namespace lastrivet::ui
