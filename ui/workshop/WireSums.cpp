// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Wire.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/RuleWords.h"
#include "ui/workshop/Sum.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>
#include <fmt/format.h>
#include <functional>
#include <utility>

namespace lastrivet::ui {

namespace {

using workshop::DropLimit;
using workshop::Quantity;
using workshop::Rating;
using workshop::WireRun;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

QString volts(double value)
{
    return QLocale().toString(value, 'f', 3) + QChar(QChar::Nbsp) + QStringLiteral("V");
}

QString amperes(double value)
{
    return QLocale().toString(value) + QChar(QChar::Nbsp) + QStringLiteral("A");
}

SumField voltageField()
{
    SumField field{tr("Circuit")};
    for (const auto &limit : workshop::dropLimits()) {
        field.keys.push_back(fmt::to_string(limit.nominal));
        field.choices << QLocale().toString(limit.nominal) + QChar(QChar::Nbsp) +
                             QStringLiteral("V");
    }
    return field;
}

SumField ratingField()
{
    SumField field{tr("Insulation")};
    for (const auto rating : Words<Rating>::list) {
        field.keys.emplace_back(rating);
        field.choices << toQt(rating) + QChar(QChar::Nbsp) + QStringLiteral("°C");
    }
    return field;
}

SumField gaugeField()
{
    SumField field{tr("Wire size, AWG")};
    field.keys = workshop::gauges();
    for (const auto &gauge : field.keys)
        field.choices << toQt(gauge);
    return field;
}

DropLimit limitOf(const std::string &nominal)
{
    for (const auto &limit : workshop::dropLimits()) {
        if (fmt::to_string(limit.nominal) == nominal)
            return limit;
    }
    return {};
}

Rating ratingOf(const std::string &key)
{
    const auto &list = Words<Rating>::list;
    return Rating(std::find(list.begin(), list.end(), key) - list.begin());
}

/// A limit, and whether the value stays below it.
Figure limitFigure(const QString &what, double value, double limit,
                   const std::function<QString(double)> &inUnit, workshop::Source source)
{
    Figure figure{what, inUnit(limit), tr("within"), std::move(source)};
    figure.isExceeded = value > limit * (1 + 1e-12);
    if (figure.isExceeded)
        figure.basis = tr("exceeded: %1 is above %2").arg(inUnit(value), inUnit(limit));
    return figure;
}

void addLimits(std::vector<Figure> &figures, const WireRun &run, const DropLimit &limit)
{
    workshop::Source remembered = limit.source;
    remembered.verified = "from memory";
    workshop::Source read = limit.source;
    read.verified = "read in one place";
    figures.push_back(
        limitFigure(tr("Allowed all the time"), run.drop, limit.continuous, volts, read));
    figures.push_back(
        limitFigure(tr("Allowed now and then"), run.drop, limit.intermittent, volts, remembered));
}

void addTerminal(std::vector<Figure> &figures, const WireRun &run, UnitSystem units)
{
    if (const auto strands = workshop::strandLimit(run.gauge))
        figures.push_back(
            {tr("Strands that may be damaged"),
             tr("%1 nicked, %2 broken")
                 .arg(QLocale().toString(strands->nicked), QLocale().toString(strands->broken)),
             tr("of %1 strands").arg(toQt(strands->strands)), strands->source});
    for (const auto &pull : workshop::crimpPulls(run.gauge))
        figures.push_back({tr("A crimped terminal holds at least"),
                           figureText(pull.least, Quantity::Force, units), ruleWords(pull.basis),
                           pull.source});
}

SumAnswer workRun(const Entered &entered)
{
    const auto &n = entered.numbers;
    const auto run =
        workshop::wireRun(entered.keys[0], n[1], n[2], ratingOf(entered.keys[4]), n[5]);
    if (!run)
        return {{}, inWords(run.reason())};
    SumAnswer answer;
    answer.figures = {{tr("Voltage drop"), volts(run->drop), tr("ohms a foot × feet × amperes"),
                       run->source, true}};
    addLimits(answer.figures, *run, limitOf(entered.keys[3]));
    answer.figures.push_back(
        limitFigure(tr("The wire carries at most"), n[2], run->most_amps, amperes, run->source));
    addTerminal(answer.figures, *run, entered.units);
    return answer;
}

Sum runSum()
{
    Sum sum;
    sum.title = tr("Voltage drop of a wire");
    sum.how = tr("One way, with the airframe as return. A hot wire has more resistance: give the "
                 "temperature that the conductor reaches.");
    sum.fields = {gaugeField(),
                  {tr("Length of the wire"), Quantity::Run, 20},
                  {tr("Current, A"), Quantity::Number, 5},
                  voltageField(),
                  ratingField(),
                  {tr("Conductor, °C"), Quantity::Number, 20}};
    sum.work = workRun;
    return sum;
}

SumAnswer workThinnest(const Entered &entered)
{
    const auto &n = entered.numbers;
    const auto limit = limitOf(entered.keys[2]);
    const auto run =
        workshop::thinnestWire(n[0], n[1], limit.continuous, ratingOf(entered.keys[3]), n[4]);
    if (!run)
        return {{}, inWords(run.reason())};
    SumAnswer answer;
    answer.figures = {
        {tr("Thinnest wire, AWG"), toQt(run->gauge), tr("drop and current within the tables"),
         run->source, true},
        {tr("Voltage drop"), volts(run->drop), tr("ohms a foot × feet × amperes"), run->source},
        {tr("The wire carries at most"), amperes(run->most_amps), {}, run->source}};
    addLimits(answer.figures, *run, limit);
    return answer;
}

Sum thinnestSum()
{
    Sum sum;
    sum.title = tr("Thinnest wire for a load");
    sum.fields = {{tr("Length of the wire"), Quantity::Run, 20},
                  {tr("Current, A"), Quantity::Number, 5},
                  voltageField(),
                  ratingField(),
                  {tr("Conductor, °C"), Quantity::Number, 20}};
    sum.work = workThinnest;
    return sum;
}

} // namespace

std::vector<Sum> wireSums()
{
    return {runSum(), thinnestSum()};
}

} // namespace lastrivet::ui
