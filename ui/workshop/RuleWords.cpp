// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/RuleWords.h"

#include "ui/convert/QtText.h"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

namespace lastrivet::ui {

namespace {

struct Words {
    std::string_view key;
    const char *words;
};

constexpr Words rules[]{
    {"AC_reused_nut", QT_TRANSLATE_NOOP("Workshop", "nut used again")},
    {"military_breakaway", QT_TRANSLATE_NOOP("Workshop", "military, breakaway")},
    {"industrial_nylon_insert", QT_TRANSLATE_NOOP("Workshop", "ground equipment, nylon insert")},
    {"final_modern", QT_TRANSLATE_NOOP("Workshop", "final hole, today")},
    {"final_1940s_manual", QT_TRANSLATE_NOOP("Workshop", "final hole, 1940s manual")},
    {"blind_rivet_hole", QT_TRANSLATE_NOOP("Workshop", "hole for a blind rivet")},
    {"bolt_for_rivet_hole", QT_TRANSLATE_NOOP("Workshop", "hole for a bolt in a rivet's place")},
    {"nominal_rule", QT_TRANSLATE_NOOP("Workshop", "usual target, 1.5 D × 0.5 D")},
    {"mil_minimum", QT_TRANSLATE_NOOP("Workshop", "military minimum")},
    {"trade_gauge", QT_TRANSLATE_NOOP("Workshop", "trade gauge")},
    {"period_manual", QT_TRANSLATE_NOOP("Workshop", "1940s manual")},
    {"edge_distance_min", QT_TRANSLATE_NOOP("Workshop", "edge distance, least")},
    {"edge_distance_max", QT_TRANSLATE_NOOP("Workshop", "edge distance, most")},
    {"edge_distance_preferred", QT_TRANSLATE_NOOP("Workshop", "edge distance, better")},
    {"edge_distance_allowance", QT_TRANSLATE_NOOP("Workshop", "allowance added when laying out")},
    {"edge_margin_min_3/32_universal",
     QT_TRANSLATE_NOOP("Workshop", "military least for 3/32 universal heads")},
    {"edge_distance_repair_trigger",
     QT_TRANSLATE_NOOP("Workshop", "below this a bolt takes the rivet's place")},
    {"pitch_min", QT_TRANSLATE_NOOP("Workshop", "pitch, least")},
    {"pitch_typical_low", QT_TRANSLATE_NOOP("Workshop", "usual pitch, from")},
    {"pitch_typical_high", QT_TRANSLATE_NOOP("Workshop", "usual pitch, to")},
    {"pitch_max_navy", QT_TRANSLATE_NOOP("Workshop", "pitch, most, Navy")},
    {"pitch_max_trade", QT_TRANSLATE_NOOP("Workshop", "pitch, most, trade")},
    {"pitch_max_faa", QT_TRANSLATE_NOOP("Workshop", "pitch, most, FAA")},
    {"transverse_pitch_ratio", QT_TRANSLATE_NOOP("Workshop", "distance of rows")},
    {"transverse_pitch_min", QT_TRANSLATE_NOOP("Workshop", "distance of rows, least")},
    {"rivet_dia_rule_faa", QT_TRANSLATE_NOOP("Workshop", "rivet diameter, target")},
    {"rivet_dia_min_navy", QT_TRANSLATE_NOOP("Workshop", "rivet diameter, least, Navy")},
    {"rivet_dia_max_navy", QT_TRANSLATE_NOOP("Workshop", "rivet diameter, most, Navy")},
    {"rivet_dia_min_structural",
     QT_TRANSLATE_NOOP("Workshop", "rivet diameter, least in structure")},
    {"length_rule", QT_TRANSLATE_NOOP("Workshop", "length of a rivet")},
    {"length_protrusion_low", QT_TRANSLATE_NOOP("Workshop", "tail before driving, least")},
    {"tube_rivet_dia_min", QT_TRANSLATE_NOOP("Workshop", "rivet through a tube, least")},
    {"replacement_oversize", QT_TRANSLATE_NOOP("Workshop", "larger when replacing a harder rivet")},
    {"oversize_repair_limit_pct", QT_TRANSLATE_NOOP("Workshop", "oversize repairs, most")},
    {"deburr_depth_max_pct", QT_TRANSLATE_NOOP("Workshop", "depth of deburring, most")},
    {"min_sheet_machine_csk_100deg",
     QT_TRANSLATE_NOOP("Workshop", "thinnest sheet to countersink by machine")},
    {"min_surface_sheet_machine_csk_100deg",
     QT_TRANSLATE_NOOP("Workshop", "thinnest outer sheet to countersink by machine")},
    {"max_csk_dia_shear_head",
     QT_TRANSLATE_NOOP("Workshop", "countersink for reduced heads, most")},
    {"csk_dia_min", QT_TRANSLATE_NOOP("Workshop", "countersink, least")},
    {"csk_dia_max", QT_TRANSLATE_NOOP("Workshop", "countersink, most")},
    {"dimple_best_up_to", QT_TRANSLATE_NOOP("Workshop", "dimpling is best up to")},
    {"dimple_up_to_1940s", QT_TRANSLATE_NOOP("Workshop", "dimpling up to, 1940s")},
    {"csk_depth_max_pct", QT_TRANSLATE_NOOP("Workshop", "depth of a countersink, most")},
    {"knife_edge_not_approved", QT_TRANSLATE_NOOP("Workshop", "knife edge, not approved")},
    {"blend_ratio_length_to_depth", QT_TRANSLATE_NOOP("Workshop", "blend, length to depth")},
    {"no_power_rotary_file_below", QT_TRANSLATE_NOOP("Workshop", "no rotary file on sheet below")},
    {"blast_needs_engineering_approval_below",
     QT_TRANSLATE_NOOP("Workshop", "no blasting without approval below")},
    {"blast_pressure_clad_psi", QT_TRANSLATE_NOOP("Workshop", "blasting pressure, clad")},
    {"blast_pressure_bare_psi", QT_TRANSLATE_NOOP("Workshop", "blasting pressure, bare")},
    {"blast_dwell_max", QT_TRANSLATE_NOOP("Workshop", "blasting one spot, most")},
    {"finish_grit_last", QT_TRANSLATE_NOOP("Workshop", "last grit")},
    {"primer_after_steel_sanding_within",
     QT_TRANSLATE_NOOP("Workshop", "primer on sanded steel within")},
    {"removal_depth_limit", QT_TRANSLATE_NOOP("Workshop", "how deep may be removed")},
    {"skin_corrosion_negligible_example",
     QT_TRANSLATE_NOOP("Workshop", "one type's limit for skins")},
    {"structure_corrosion_negligible_example",
     QT_TRANSLATE_NOOP("Workshop", "one type's limit for structure")},
    {"stop_drill_dia", QT_TRANSLATE_NOOP("Workshop", "stop drill")},
    {"cutout_corner_radius_min",
     QT_TRANSLATE_NOOP("Workshop", "corner of a cut-out, least radius")},
    {"fitting_inspection_magnifier_min", QT_TRANSLATE_NOOP("Workshop", "magnifier for fittings")},
    {"elongated_hole_in_unbushed_fitting",
     QT_TRANSLATE_NOOP("Workshop", "worn hole in a fitting without bush")},
    {"threads_through_nut_min", QT_TRANSLATE_NOOP("Workshop", "threads through the nut, least")},
    {"washers_max", QT_TRANSLATE_NOOP("Workshop", "washers, most")},
    {"smallest_steel_bolt_primary", QT_TRANSLATE_NOOP("Workshop", "smallest steel bolt")},
    {"smallest_aluminium_bolt_primary", QT_TRANSLATE_NOOP("Workshop", "smallest aluminium bolt")},
    {"locking_used_once", QT_TRANSLATE_NOOP("Workshop", "locking used again")},
    {"self_locking_on_rotating_part", QT_TRANSLATE_NOOP("Workshop", "self-locking nut")},
    {"wrench_calibration", QT_TRANSLATE_NOOP("Workshop", "calibration at least every")},
    {"lubricated_threads", QT_TRANSLATE_NOOP("Workshop", "lubricated threads")},
    {"torque_paint", QT_TRANSLATE_NOOP("Workshop", "torque paint")},
    {"wire_dia_min", QT_TRANSLATE_NOOP("Workshop", "safety wire, least")},
    {"torque_for_alignment", QT_TRANSLATE_NOOP("Workshop", "turning on to line up holes")},
    {"twists_per_inch", QT_TRANSLATE_NOOP("Workshop", "twists")},
    {"pigtail_turns", QT_TRANSLATE_NOOP("Workshop", "pigtail, turns")},
    {"pigtail_length", QT_TRANSLATE_NOOP("Workshop", "pigtail, length")},
    {"split_pin_prongs", QT_TRANSLATE_NOOP("Workshop", "prongs of a split pin")},
    {"turnbuckle_threads_outside_max",
     QT_TRANSLATE_NOOP("Workshop", "threads outside a turnbuckle, most")},
    {"turnbuckle_wraps_min", QT_TRANSLATE_NOOP("Workshop", "wraps at a turnbuckle, least")},
    {"swaged_end_proof_load", QT_TRANSLATE_NOOP("Workshop", "proof load of a swaged end")},
    {"fairlead_deflection_max", QT_TRANSLATE_NOOP("Workshop", "deflection at a fairlead, most")},
    {"tensiometer_table", QT_TRANSLATE_NOOP("Workshop", "table of a tensiometer")},
    {"tensiometer_readings", QT_TRANSLATE_NOOP("Workshop", "readings of a tensiometer")},
    {"tensiometer_from_fittings_min",
     QT_TRANSLATE_NOOP("Workshop", "tensiometer from fittings, least")},
    {"travel_tolerance", QT_TRANSLATE_NOOP("Workshop", "tolerance of travel")},
    {"feeder_drop_max", QT_TRANSLATE_NOOP("Workshop", "drop of a feeder, most")},
    {"ground_path_max", QT_TRANSLATE_NOOP("Workshop", "ground path, most")},
    {"hot_wire_copper", QT_TRANSLATE_NOOP("Workshop", "hot copper wire")},
    {"hot_wire_aluminium", QT_TRANSLATE_NOOP("Workshop", "hot aluminium wire")},
    {"crimp_pull_speed", QT_TRANSLATE_NOOP("Workshop", "pulling a crimp")},
    {"crimp_rule", QT_TRANSLATE_NOOP("Workshop", "crimp")},
    {"epoxy_pot_life_halves_every", QT_TRANSLATE_NOOP("Workshop", "epoxy: pot life halves every")},
    {"epoxy_no_load_before", QT_TRANSLATE_NOOP("Workshop", "epoxy: no load before")},
    {"epoxy_primer_stand", QT_TRANSLATE_NOOP("Workshop", "epoxy primer: let stand")},
    {"epoxy_primer_use_within", QT_TRANSLATE_NOOP("Workshop", "epoxy primer: use within")},
    {"sealant_mix_ratio", QT_TRANSLATE_NOOP("Workshop", "sealant: mix")},
    {"military", QT_TRANSLATE_NOOP("Workshop", "military")},
    {"commercial", QT_TRANSLATE_NOOP("Workshop", "commercial")},
    {"protruding", QT_TRANSLATE_NOOP("Workshop", "protruding head")},
    {"flush/countersunk", QT_TRANSLATE_NOOP("Workshop", "flush head")},
    {"any", QT_TRANSLATE_NOOP("Workshop", "any")},
    {"1 row, protruding", QT_TRANSLATE_NOOP("Workshop", "1 row, protruding head")},
    {"2 rows, protruding", QT_TRANSLATE_NOOP("Workshop", "2 rows, protruding head")},
    {"3+ rows, protruding", QT_TRANSLATE_NOOP("Workshop", "3 rows or more, protruding head")},
    {"1 row, flush", QT_TRANSLATE_NOOP("Workshop", "1 row, flush head")},
    {"2 rows, flush", QT_TRANSLATE_NOOP("Workshop", "2 rows, flush head")},
    {"3+ rows, flush", QT_TRANSLATE_NOOP("Workshop", "3 rows or more, flush head")},
};

constexpr Words marks[]{
    {"own", QT_TRANSLATE_NOOP("Workshop", "the project's own")},
    {"read in two places", QT_TRANSLATE_NOOP("Workshop", "read in two places")},
    {"read in one place", QT_TRANSLATE_NOOP("Workshop", "read in one place")},
    {"computed", QT_TRANSLATE_NOOP("Workshop", "computed")},
    {"second hand", QT_TRANSLATE_NOOP("Workshop", "second hand")},
    {"from memory", QT_TRANSLATE_NOOP("Workshop", "from memory: look it up")},
};

template <std::size_t Count> const char *find(const Words (&list)[Count], std::string_view key)
{
    const auto found = std::find_if(std::begin(list), std::end(list),
                                    [&](const Words &words) { return words.key == key; });
    return found == std::end(list) ? nullptr : found->words;
}

} // namespace

QString ruleWords(std::string_view key)
{
    if (const char *words = find(rules, key))
        return QCoreApplication::translate("Workshop", words);
    QString text = toQt(key);
    return text.replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString verifiedWords(std::string_view verified)
{
    if (const char *words = find(marks, verified))
        return QCoreApplication::translate("Workshop", words);
    return toQt(verified);
}

QString asideWords(const QString &known)
{
    return known.isEmpty() ? QCoreApplication::translate("Workshop", "set aside")
                           : QCoreApplication::translate("Workshop", "set aside; %1").arg(known);
}

} // namespace lastrivet::ui
