// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SheetToSign.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

SheetToSign::Deficiency deficiencyOf(const Region &region, const Squawk &squawk,
                                     const Inspection &inspection)
{
    SheetToSign::Deficiency line;
    line.number = squawk.finding_number.empty() ? squawk.number : squawk.finding_number;
    line.inspection =
        inspection.report_number.empty() ? inspection.reference : inspection.report_number;
    line.text = squawk.title;
    line.corrected_on = region.ifHappened(squawk.fixed_on);
    if (line.corrected_on) {
        line.correction = squawk.correction;
        line.corrected_by = personName(region.records(), squawk.fixed_by);
    }
    return line;
}

/// A finding that names no part, as on papers, belongs to the closing of the aircraft.
bool isWithin(const Region::Chosen &chosen, const Squawk &squawk)
{
    const IdSet<Component> &reach = chosen.answer->reach;
    return squawk.component_id ? std::binary_search(reach.begin(), reach.end(), squawk.component_id)
                               : chosen.closing->scope == ClosingScope::Aircraft;
}

/// Findings of inspections within the reach of the closing that nobody has verified or accepted.
std::vector<SheetToSign::Deficiency> deficiencies(const Region &region,
                                                  const Region::Chosen &chosen)
{
    std::vector<SheetToSign::Deficiency> lines;
    for (const Squawk &squawk : region.records().squawks) {
        const Inspection *inspection = region.records().findLive(squawk.inspection_id);
        const bool isOpen = !squawk.withdrawn_on && happened(squawk.found_on, region.asOf()) &&
                            !region.ifHappened(squawk.verified_on) &&
                            !region.ifHappened(squawk.accepted_on);
        if (inspection && isOpen && isWithin(chosen, squawk))
            lines.push_back(deficiencyOf(region, squawk, *inspection));
    }
    return lines;
}

} // namespace

std::vector<SheetToSign> sheetsToSign(const Region &region, const std::vector<Standing> &standings)
{
    std::vector<SheetToSign> sheets;
    for (const Region::Chosen &chosen : region.chosen()) {
        const auto standing =
            std::find_if(standings.begin(), standings.end(),
                         [&](const Standing &entry) { return entry.id == chosen.closing->id; });
        const bool isEarly = chosen.answer->state == readiness::State::ClosedEarly;
        if (standing == standings.end() || (standing->hold_points.empty() && !isEarly))
            continue;
        sheets.push_back({standing->id, standing->title, standing->part,
                          deficiencies(region, chosen), isEarly, standing->hold_points});
    }
    return sheets;
}

} // namespace lastrivet::packet
