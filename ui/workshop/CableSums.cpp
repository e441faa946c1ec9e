// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/QtText.h"
#include "ui/workshop/Sum.h"

#include <QCoreApplication>

#include <charconv>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;
using workshop::WorkshopTable;

/// MIL-DTL-781J: a swaged end is pulled with 60 % of what the cable holds.
constexpr double proofShare = 0.6;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

const WorkshopTable &cables()
{
    return WorkshopTable::named("cable_strength");
}

SumAnswer workCable(const Entered &entered)
{
    std::size_t row = 0;
    std::from_chars(entered.keys[0].data(), entered.keys[0].data() + entered.keys[0].size(), row);
    const auto &table = cables();
    const auto source = table.source(row);
    const workshop::Source proof{"MIL-DTL-781J", "read in one place"};
    const double galvanized = table.number(row, "min_break_comp_A_lb").value_or(0);
    const double stainless = table.number(row, "min_break_comp_B_cres_lb").value_or(0);
    const auto force = [&](double pounds) {
        return figureText(pounds, Quantity::Force, entered.units);
    };
    return {{{tr("Breaks at, at least"), force(galvanized), tr("composition A"), source, true},
             {tr("Breaks at, at least"), force(stainless), tr("composition B, stainless"), source,
              true},
             {tr("Proof load of a swaged end"), force(proofShare * galvanized),
              tr("60 % of that, held 5 s; composition A"), proof},
             {tr("Proof load of a swaged end"), force(proofShare * stainless),
              tr("60 % of that, held 5 s; composition B"), proof}},
            {}};
}

} // namespace

std::vector<Sum> cableSums()
{
    Sum sum;
    sum.title = tr("Strength of a control cable");
    SumField cable{tr("Cable")};
    for (std::size_t row = 0; row < cables().rowCount(); ++row) {
        cable.keys.push_back(std::to_string(row));
        cable.choices << tr("%1 in, %2")
                             .arg(toQt(cables().text(row, "dia_in")),
                                  toQt(cables().text(row, "construction")));
    }
    sum.fields = {cable};
    sum.work = workCable;
    return {sum};
}

} // namespace lastrivet::ui
