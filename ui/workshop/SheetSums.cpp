// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workshop/Inches.h"
#include "core/workshop/Rivet.h"
#include "core/workshop/Sheet.h"
#include "ui/convert/QtText.h"
#include "ui/workshop/Sum.h"

#include <QCoreApplication>
#include <QLocale>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;
using workshop::Source;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

Source splicePaper()
{
    return {std::string(workshop::spliceSource), "read in one place"};
}

Sum sizeSum()
{
    Sum sum;
    sum.title = tr("Which rivet for a sheet");
    sum.fields = {{tr("Thicker sheet"), Quantity::Length, 0.032}};
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto sizes = workshop::rivetSizes(entered.numbers[0]);
        if (!sizes)
            return {{}, inWords(sizes.reason())};
        const QString size =
            sizes->size.empty() ? tr("larger than any of the tables") : toQt(sizes->size);
        return {{{tr("About three times the sheet"),
                  figureText(sizes->target, Quantity::Length, entered.units),
                  tr("the target; by the Navy the most. Next size: %1").arg(size),
                  sizes->target_source, true},
                 {tr("At least"), figureText(sizes->least, Quantity::Length, entered.units),
                  tr("once the sheet, 3/32 in structure"), sizes->least_source}},
                {}};
    };
    return sum;
}

SumAnswer workSeam(const Entered &entered)
{
    const auto &n = entered.numbers;
    const auto perInch =
        workshop::rivetsPerInch(n[1], workshop::inches(entered.keys[0]).value_or(0));
    if (!perInch)
        return {{}, inWords(perInch.reason())};
    const auto rivets = workshop::rivetsOfSplice(perInch->per_inch, n[3] / 100, n[2]);
    if (!rivets)
        return {{}, inWords(rivets.reason())};
    return {{{tr("Rivets on each side of the seam"), QLocale().toString(*rivets), tr("rounded up"),
              splicePaper(), true},
             {tr("Rivets an inch of width"), QLocale().toString(perInch->per_inch),
              tr("for 5052 sheet of %1, 2117 rivets with protruding heads")
                  .arg(figureText(perInch->thickness, Quantity::Length, entered.units)),
              perInch->source}},
            {}};
}

Sum seamSum()
{
    Sum sum;
    sum.title = tr("Rivets of a splice in 5052 sheet");
    sum.how = tr("Other alloys have tables of their own. Part of the count is enough in some "
                 "places: the drawing or the text of the table says which share.");
    SumField diameter{tr("Rivet")};
    for (const auto *size : {"3/32", "1/8", "5/32", "3/16", "1/4"}) {
        diameter.keys.emplace_back(size);
        diameter.choices << toQt(size) + QChar(QChar::Nbsp) + QStringLiteral("in");
    }
    sum.fields = {diameter,
                  {tr("Sheet"), Quantity::Length, 0.032},
                  {tr("Width of the splice"), Quantity::Length, 10},
                  {tr("Share of the count, %"), Quantity::Number, 100}};
    sum.work = workSeam;
    return sum;
}

Sum roomSum()
{
    Sum sum;
    sum.title = tr("Rivets that there is room for");
    sum.fields = {{tr("Rows"), Quantity::Number, 2},
                  {tr("Width"), Quantity::Length, 10},
                  {tr("Pitch"), Quantity::Length, 0.5}};
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto &n = entered.numbers;
        const auto count = workshop::rivetsThatFit(n[0], n[1], n[2]);
        if (!count)
            return {{}, inWords(count.reason())};
        return {{{tr("Rivets"), QLocale().toString(*count), tr("rows × width / pitch"),
                  splicePaper(), true}},
                {}};
    };
    return sum;
}

Sum bendSum()
{
    Sum sum;
    sum.title = tr("Setback of a bend");
    sum.fields = {{tr("Bent by, degrees"), Quantity::Number, 90},
                  {tr("Inner bend radius"), Quantity::Length, 0.25},
                  {tr("Sheet"), Quantity::Length, 0.064}};
    sum.work = [](const Entered &entered) -> SumAnswer {
        const auto &n = entered.numbers;
        const auto setback = workshop::setback(n[0], n[1], n[2]);
        if (!setback)
            return {{}, inWords(setback.reason())};
        return {{{tr("Setback"),
                  figureText(*setback, Quantity::Length, entered.units),
                  QStringLiteral("K × (BR + MT), K = tan(α / 2)"),
                  {std::string(workshop::setbackSource), "read in one place"},
                  true}},
                {}};
    };
    return sum;
}

} // namespace

std::vector<Sum> sheetSums()
{
    return {sizeSum(), seamSum(), roomSum(), bendSum()};
}

} // namespace lastrivet::ui
