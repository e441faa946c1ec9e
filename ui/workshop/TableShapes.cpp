// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/TableShapes.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace lastrivet::ui {

namespace {

using enum workshop::Quantity;

constexpr ColumnShape torque[]{
    {QT_TRANSLATE_NOOP("Workshop", "Thread"), "thread"},
    {QT_TRANSLATE_NOOP("Workshop", "Tension nut"), "tension_nut_min_inlb", Torque,
     "tension_nut_max_inlb"},
    {QT_TRANSLATE_NOOP("Workshop", "Shear nut"), "shear_nut_min_inlb", Torque,
     "shear_nut_max_inlb"},
    {QT_TRANSLATE_NOOP("Workshop", "Most, tension"), "max_allow_tension_inlb", Torque},
    {QT_TRANSLATE_NOOP("Workshop", "Most, shear"), "max_allow_shear_inlb", Torque},
    {QT_TRANSLATE_NOOP("Workshop", "Shear estimated"), "shear_estimated"},
};
constexpr ColumnShape prevailing[]{
    {QT_TRANSLATE_NOOP("Workshop", "Thread"), "thread"},
    {QT_TRANSLATE_NOOP("Workshop", "Basis"), "basis", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Least drag"), "min_inlb", Torque},
};
constexpr ColumnShape extensions[]{
    {QT_TRANSLATE_NOOP("Workshop", "Case"), "text"},
    {QT_TRANSLATE_NOOP("Workshop", "Lever"), "lever_L"},
    {QT_TRANSLATE_NOOP("Workshop", "Extension"), "extension_E"},
    {QT_TRANSLATE_NOOP("Workshop", "Printed"), "published_result"},
    {QT_TRANSLATE_NOOP("Workshop", "Worked out"), "computed"},
};
constexpr ColumnShape heads[]{
    {QT_TRANSLATE_NOOP("Workshop", "Rivet"), "rivet_dia"},
    {QT_TRANSLATE_NOOP("Workshop", "Basis"), "basis", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Width of the head"), "head_dia_min_in", Length,
     "head_dia_max_in"},
    {QT_TRANSLATE_NOOP("Workshop", "Height of the head"), "head_height_min_in", Length,
     "head_height_max_in"},
};
constexpr ColumnShape rules[]{
    {QT_TRANSLATE_NOOP("Workshop", "Rule"), "item", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Holds for"), "case", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Value"), "value", Number, {}, false, "unit"},
};
constexpr ColumnShape plainRules[]{
    {QT_TRANSLATE_NOOP("Workshop", "Rule"), "item", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Value"), "value", Number, {}, false, "unit"},
};
constexpr ColumnShape countersinks[]{
    {QT_TRANSLATE_NOOP("Workshop", "Rule"), "item", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Rivet"), "rivet_dia"},
    {QT_TRANSLATE_NOOP("Workshop", "Value"), "value", Number, {}, false, "unit"},
};
constexpr ColumnShape drills[]{
    {QT_TRANSLATE_NOOP("Workshop", "Fastener"), "fastener"},
    {QT_TRANSLATE_NOOP("Workshop", "Basis"), "basis", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Drill"), "drill"},
    {QT_TRANSLATE_NOOP("Workshop", "Diameter"), "drill_dia_in", Length},
    {QT_TRANSLATE_NOOP("Workshop", "Hole"), "hole_min_in", Length, "hole_max_in"},
    {QT_TRANSLATE_NOOP("Workshop", "Pilot hole"), "pilot"},
};
constexpr ColumnShape perInch[]{
    {QT_TRANSLATE_NOOP("Workshop", "Sheet"), "thickness_in", Length},
    {"3/32", "3/32"},
    {"1/8", "1/8"},
    {"5/32", "5/32"},
    {"3/16", "3/16"},
    {"1/4", "1/4"},
    {QT_TRANSLATE_NOOP("Workshop", "3/16 bolts"), "AN3_bolts"},
};
constexpr ColumnShape examples[]{
    {QT_TRANSLATE_NOOP("Workshop", "Case"), "case"},
    {QT_TRANSLATE_NOOP("Workshop", "Sum"), "formula"},
    {QT_TRANSLATE_NOOP("Workshop", "Printed"), "published"},
    {QT_TRANSLATE_NOOP("Workshop", "Worked out"), "computed"},
};
constexpr ColumnShape cables[]{
    {QT_TRANSLATE_NOOP("Workshop", "Cable, in"), "dia_in"},
    {QT_TRANSLATE_NOOP("Workshop", "Made of"), "construction"},
    {QT_TRANSLATE_NOOP("Workshop", "Composition A"), "min_break_comp_A_lb", Force},
    {QT_TRANSLATE_NOOP("Workshop", "Composition B, stainless"), "min_break_comp_B_cres_lb", Force},
};
constexpr ColumnShape turnbuckles[]{
    {QT_TRANSLATE_NOOP("Workshop", "Cable, in"), "cable_dia_in"},
    {QT_TRANSLATE_NOOP("Workshop", "Wrap"), "wrap"},
    {QT_TRANSLATE_NOOP("Workshop", "Wire"), "wire_dia_in", Length},
    {QT_TRANSLATE_NOOP("Workshop", "Material"), "material"},
};
constexpr ColumnShape wires[]{
    {QT_TRANSLATE_NOOP("Workshop", "AWG"), "awg"},
    {QT_TRANSLATE_NOOP("Workshop", "A at 105 °C"), "amps_105C"},
    {QT_TRANSLATE_NOOP("Workshop", "A at 150 °C"), "amps_150C"},
    {QT_TRANSLATE_NOOP("Workshop", "A at 200 °C"), "amps_200C"},
    {QT_TRANSLATE_NOOP("Workshop", "Ohms per 1,000 ft"), "ohms_per_1000ft_20C_tin"},
    {QT_TRANSLATE_NOOP("Workshop", "Circular mils"), "circ_mils"},
};
constexpr ColumnShape dropExamples[]{
    {QT_TRANSLATE_NOOP("Workshop", "Table"), "table"},
    {QT_TRANSLATE_NOOP("Workshop", "AWG"), "awg"},
    {QT_TRANSLATE_NOOP("Workshop", "Length of the wire"), "run_ft", Run},
    {QT_TRANSLATE_NOOP("Workshop", "A"), "amps"},
    {QT_TRANSLATE_NOOP("Workshop", "Printed, V"), "published_drop_V"},
    {QT_TRANSLATE_NOOP("Workshop", "Worked out, V"), "computed_drop_V"},
};
constexpr ColumnShape dropLimits[]{
    {QT_TRANSLATE_NOOP("Workshop", "Circuit, V"), "nominal_V"},
    {QT_TRANSLATE_NOOP("Workshop", "All the time, V"), "continuous_V"},
    {QT_TRANSLATE_NOOP("Workshop", "Now and then, V"), "intermittent_V"},
};
constexpr ColumnShape crimps[]{
    {QT_TRANSLATE_NOOP("Workshop", "AWG"), "awg"},
    {QT_TRANSLATE_NOOP("Workshop", "Basis"), "basis", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "Holds at least"), "min_pull_lb", Force},
};
constexpr ColumnShape strands[]{
    {QT_TRANSLATE_NOOP("Workshop", "AWG"), "awg"},
    {QT_TRANSLATE_NOOP("Workshop", "Strands"), "strands"},
    {QT_TRANSLATE_NOOP("Workshop", "Nicked, most"), "max_nicked"},
    {QT_TRANSLATE_NOOP("Workshop", "Broken, most"), "max_broken"},
};
constexpr ColumnShape sealants[]{
    {QT_TRANSLATE_NOOP("Workshop", "Class"), "class"},
    {QT_TRANSLATE_NOOP("Workshop", "Basis"), "basis"},
    {QT_TRANSLATE_NOOP("Workshop", "Application, h"), "application_time_h"},
    {QT_TRANSLATE_NOOP("Workshop", "Tack-free, h"), "tack_free_h"},
    {QT_TRANSLATE_NOOP("Workshop", "Cured, h"), "cure_h"},
};
constexpr ColumnShape weights[]{
    {QT_TRANSLATE_NOOP("Workshop", "What"), "item"},
    {QT_TRANSLATE_NOOP("Workshop", "Value"), "value", Number, {}, false, "unit"},
};
constexpr ColumnShape weighings[]{
    {QT_TRANSLATE_NOOP("Workshop", "Example"), "example", Number, {}, true},
    {QT_TRANSLATE_NOOP("Workshop", "What"), "item"},
    {QT_TRANSLATE_NOOP("Workshop", "Weight"), "weight"},
    {QT_TRANSLATE_NOOP("Workshop", "Arm"), "arm"},
    {QT_TRANSLATE_NOOP("Workshop", "Moment"), "moment"},
    {QT_TRANSLATE_NOOP("Workshop", "Result"), "result"},
};

constexpr TableShape shapes[]{
    {"torque_fine", QT_TRANSLATE_NOOP("Workshop", "Torque of fine threads"), torque},
    {"torque_coarse", QT_TRANSLATE_NOOP("Workshop", "Torque of coarse threads"), torque},
    {"prevailing_torque", QT_TRANSLATE_NOOP("Workshop", "Least drag of self-locking nuts"),
     prevailing},
    {"torque_extension_examples",
     QT_TRANSLATE_NOOP("Workshop", "Worked examples of wrench extensions"), extensions},
    {"bolt_rules", QT_TRANSLATE_NOOP("Workshop", "Bolts, nuts and locking"), rules},
    {"safety_wire", QT_TRANSLATE_NOOP("Workshop", "Safety wire and split pins"), rules},
    {"rivet_shop_head", QT_TRANSLATE_NOOP("Workshop", "Shop heads"), heads},
    {"rivet_spacing", QT_TRANSLATE_NOOP("Workshop", "Rivets: distances and sizes"), rules},
    {"countersink", QT_TRANSLATE_NOOP("Workshop", "Countersinks and dimples"), countersinks},
    {"drill_sizes", QT_TRANSLATE_NOOP("Workshop", "Drills and holes"), drills},
    {"rivets_per_inch_5052", QT_TRANSLATE_NOOP("Workshop", "Rivets an inch, 5052 sheet"), perInch},
    {"sheet_metal_examples", QT_TRANSLATE_NOOP("Workshop", "Worked examples of sheet metal"),
     examples},
    {"cable_strength", QT_TRANSLATE_NOOP("Workshop", "Strength of control cables"), cables},
    {"turnbuckle_safety_wire", QT_TRANSLATE_NOOP("Workshop", "Safety wire of turnbuckles"),
     turnbuckles},
    {"control_rules", QT_TRANSLATE_NOOP("Workshop", "Turnbuckles, cables and travel"), rules},
    {"wire_table_11_9", QT_TRANSLATE_NOOP("Workshop", "Copper wire"), wires},
    {"voltage_drop_limits", QT_TRANSLATE_NOOP("Workshop", "Voltage drop that is allowed"),
     dropLimits},
    {"voltage_drop_examples", QT_TRANSLATE_NOOP("Workshop", "Worked examples of voltage drop"),
     dropExamples},
    {"crimp_pull", QT_TRANSLATE_NOOP("Workshop", "Pull of crimped terminals"), crimps},
    {"nicked_strands", QT_TRANSLATE_NOOP("Workshop", "Nicked and broken strands"), strands},
    {"electrical_rules", QT_TRANSLATE_NOOP("Workshop", "Wiring"), rules},
    {"sealant", QT_TRANSLATE_NOOP("Workshop", "Sealants"), sealants},
    {"resin_and_primer", QT_TRANSLATE_NOOP("Workshop", "Resins, primers and mixing"), rules},
    {"corrosion_damage", QT_TRANSLATE_NOOP("Workshop", "Corrosion and damage"), plainRules},
    {"wb_standard_weights", QT_TRANSLATE_NOOP("Workshop", "Weights that are usual"), weights},
    {"wb_examples", QT_TRANSLATE_NOOP("Workshop", "Worked examples of weighing and loading"),
     weighings},
};

} // namespace

const TableShape *tableShape(std::string_view name)
{
    const auto *found = std::find_if(std::begin(shapes), std::end(shapes),
                                     [&](const TableShape &shape) { return shape.name == name; });
    return found == std::end(shapes) ? nullptr : found;
}

} // namespace lastrivet::ui
