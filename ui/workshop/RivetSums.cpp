// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Inches.h"
#include "core/workshop/Rivet.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/RuleWords.h"
#include "ui/workshop/Sum.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

SumField diameterField()
{
    SumField field{tr("Rivet")};
    field.keys = workshop::rivetDiameters();
    for (const auto &known : field.keys)
        field.choices << toQt(known) + QChar(QChar::Nbsp) + QStringLiteral("in");
    return field;
}

double diameterOf(const Entered &entered)
{
    return workshop::inches(entered.keys[0]).value_or(0);
}

QString bandOf(const workshop::ShopHead &head, UnitSystem units)
{
    return tr("%1 wide, %2 high")
        .arg(spanText(head.diameter_min, head.diameter_max, Quantity::Length, units),
             spanText(head.height_min, head.height_max, Quantity::Length, units));
}

void addSpacings(std::vector<Figure> &figures, const QString &what,
                 const std::vector<workshop::Spacing> &spacings, UnitSystem units)
{
    for (const auto &spacing : spacings)
        figures.push_back({what, figureText(spacing.distance, Quantity::Length, units),
                           tr("%1: %2").arg(ruleWords(spacing.rule), ruleWords(spacing.holds_for)),
                           spacing.source});
}

std::vector<Figure> rivetFigures(const workshop::Rivet &rivet, UnitSystem units)
{
    std::vector<Figure> figures;
    figures.push_back({tr("Length"), figureText(rivet.length, Quantity::Length, units),
                       tr("dash number %1: grip and 1.5 diameters, up to the next sixteenth")
                           .arg(rivet.length_code),
                       rivet.length_source, true});
    for (const auto &drill : rivet.drills)
        figures.push_back({tr("Drill"),
                           drill.diameter ? tr("%1 (%2)").arg(toQt(drill.drill),
                                                              figureText(*drill.diameter,
                                                                         Quantity::Length, units))
                                          : toQt(drill.drill),
                           ruleWords(drill.basis), drill.source});
    for (const auto &head : rivet.shop_heads)
        figures.push_back(
            {tr("Shop head"), bandOf(head, units), ruleWords(head.basis), head.source});
    for (const auto &sheet : rivet.countersink)
        figures.push_back({tr("Machine countersink from"),
                           figureText(sheet.thickness, Quantity::Length, units),
                           ruleWords(sheet.rule), sheet.source});
    addSpacings(figures, tr("Edge distance"), workshop::edgeDistances(rivet.diameter), units);
    addSpacings(figures, tr("Pitch"), workshop::pitches(rivet.diameter), units);
    return figures;
}

Sum rivetSum()
{
    Sum sum;
    sum.title = tr("Solid rivet");
    sum.how = tr("The grip is the thickness of all sheets together. Of a countersunk rivet the "
                 "length includes the head.");
    sum.fields = {diameterField(), {tr("Grip"), Quantity::Length, 0.064}};
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto rivet = workshop::rivet(diameterOf(entered), entered.numbers[1]);
        if (!rivet)
            return {{}, inWords(rivet.reason())};
        return {rivetFigures(*rivet, entered.units), {}};
    };
    return sum;
}

SumAnswer judgeHead(const Entered &entered)
{
    const double width = entered.numbers[1];
    const double height = entered.numbers[2];
    if (width <= 0 || height <= 0)
        return {{}, tr("A driven head has a width and a height above zero.")};
    // The grip does not change how large a head must be.
    const auto rivet = workshop::rivet(diameterOf(entered), 0.1);
    SumAnswer answer;
    for (const auto &head : rivet->shop_heads)
        answer.figures.push_back(
            {ruleWords(head.basis),
             workshop::isWithin(head, width, height) ? tr("passes") : tr("misses"),
             bandOf(head, entered.units), head.source, true});
    return answer;
}

Sum headSum()
{
    Sum sum;
    sum.title = tr("A driven head that was measured");
    sum.how = tr("The sources differ: a head may pass the military minimum and miss the usual "
                 "target. Write down which one was used.");
    sum.fields = {diameterField(),
                  {tr("Width of the head"), Quantity::Length, 0.17},
                  {tr("Height of the head"), Quantity::Length, 0.055}};
    sum.work = judgeHead;
    return sum;
}

} // namespace

std::vector<Sum> rivetSums()
{
    return {rivetSum(), headSum()};
}

} // namespace lastrivet::ui
