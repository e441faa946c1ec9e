// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/Topics.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

} // namespace

std::vector<Topic> topics()
{
    return {
        {tr("Bolts and torque"),
         boltSums,
         {"torque_fine", "torque_coarse", "prevailing_torque", "bolt_rules",
          "torque_extension_examples"}},
        {tr("Solid rivets"),
         rivetSums,
         {"rivet_shop_head", "rivet_spacing", "drill_sizes", "countersink"}},
        {tr("Sheet metal"), sheetSums, {"rivets_per_inch_5052", "sheet_metal_examples"}},
        {tr("Safety wire"), nullptr, {"safety_wire", "turnbuckle_safety_wire"}},
        {tr("Cables and controls"), cableSums, {"cable_strength", "control_rules"}},
        {tr("Wiring"),
         wireSums,
         {"wire_table_11_9", "voltage_drop_limits", "crimp_pull", "nicked_strands",
          "electrical_rules", "voltage_drop_examples"}},
        {tr("Sealants, resins, primers"), nullptr, {"sealant", "resin_and_primer"}},
        {tr("Corrosion and damage"), nullptr, {"corrosion_damage"}},
        {tr("Weights"), nullptr, {"wb_standard_weights", "wb_examples"}},
    };
}

} // namespace lastrivet::ui
