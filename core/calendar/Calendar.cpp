// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/Calendar.h"

#include "core/certificate/Papers.h"
#include "core/packet/InWords.h"
#include "core/readiness/CalibrationAt.h"

#include <algorithm>
#include <set>

namespace lastrivet::calendar {

namespace {

void addLine(std::string &lines, std::string_view line)
{
    if (!line.empty())
        lines.append(lines.empty() ? "" : "\n").append(line);
}

/// The closings that a visit is for, each once.
std::string closingsOf(const Records &records, const Inspection &visit)
{
    std::set<Id<Closing>> known;
    std::string titles;
    for (const Id<HoldPoint> id : visit.hold_point_ids) {
        const HoldPoint *point = records.findLive(id);
        const Closing *closing = point ? records.findLive(point->closing_id) : nullptr;
        if (closing && known.insert(closing->id).second)
            titles.append(titles.empty() ? "" : "; ").append(closing->title);
    }
    return titles;
}

Message summaryOf(const Records &records, const Inspection &visit)
{
    const std::string kind = nestedFirst(packet::inWords(visit.kind));
    const std::string closings = closingsOf(records, visit);
    if (closings.empty())
        return {"{0}", {kind}};
    return {"{0}: {1}", {kind, closings}};
}

Message summaryOf(const MaterialLot &lot)
{
    if (lot.lot_number.empty())
        return {"Expires: {0}", {lot.name}};
    return {"Expires: {0}, lot {1}", {lot.name, lot.lot_number}};
}

Entry entryOf(const Records &records, const Inspection &visit, const Tongue &tongue)
{
    Entry entry{Kind::Inspection,
                {RecordType::Inspection, visit.id.value()},
                *visit.planned_for,
                said(summaryOf(records, visit), tongue),
                {},
                visit.place};
    addLine(entry.description, packet::personName(records, visit.inspector_id));
    addLine(entry.description, visit.reference);
    return entry;
}

Entry entryOf(const MaterialLot &lot, const Tongue &tongue)
{
    Entry entry{Kind::Expiry,
                {RecordType::MaterialLot, lot.id.value()},
                lot.expires_on->dayOnly(),
                said(summaryOf(lot), tongue),
                {},
                lot.storage};
    addLine(entry.description, lot.specification);
    return entry;
}

Entry entryOf(const CertificateDocument &document, const std::string &title, const Tongue &tongue)
{
    Entry entry{Kind::Expiry,
                {RecordType::CertificateDocument, document.id.value()},
                document.expires_on->dayOnly(),
                said({"Expires: {0}", {title}}, tongue),
                {},
                {}};
    addLine(entry.description, document.number);
    return entry;
}

/// Of each paper the record that counts today: what a newer one took the place of rings no more.
void addPapers(std::vector<Entry> &all, const Records &records, const Profile &profile,
               Moment today, const Tongue &tongue)
{
    for (const certificate::Paper &paper : certificate::papers(records, profile, today)) {
        const CertificateDocument *document = records.findLive(paper.record);
        if (document && document->expires_on)
            all.push_back(entryOf(*document, paper.title, tongue));
    }
}

/// The day on which the newest calibration runs out.
std::optional<Moment> dueOf(const Tool &tool)
{
    const Tool::Calibration *newest = readiness::newestCalibration(tool);
    return newest ? newest->due_on : std::nullopt;
}

Entry entryOf(const Tool &tool, Moment due, const Tongue &tongue)
{
    Entry entry{Kind::Calibration,
                {RecordType::Tool, tool.id.value()},
                due.dayOnly(),
                said({"Calibration due: {0}", {tool.name}}, tongue),
                {},
                {}};
    if (!tool.serial_number.empty())
        addLine(entry.description, said({"Serial number {0}", {tool.serial_number}}, tongue));
    return entry;
}

bool isPlanned(const Inspection &visit)
{
    return !visit.withdrawn_on && visit.planned_for && !visit.held_on && !visit.completed_on &&
           !visit.cancelled_on;
}

} // namespace

std::vector<Entry> entries(const Records &records, const Profile &profile, Moment today,
                           const Tongue &tongue)
{
    std::vector<Entry> all;
    for (const Inspection &visit : records.inspections) {
        if (isPlanned(visit))
            all.push_back(entryOf(records, visit, tongue));
    }
    for (const MaterialLot &lot : records.material_lots) {
        if (!lot.withdrawn_on && lot.expires_on)
            all.push_back(entryOf(lot, tongue));
    }
    addPapers(all, records, profile, today, tongue);
    for (const Tool &tool : records.tools) {
        const std::optional<Moment> due = dueOf(tool);
        if (!tool.withdrawn_on && tool.needs_calibration && due)
            all.push_back(entryOf(tool, *due, tongue));
    }
    const Moment first = today.plusDays(-keptDays).value_or(today);
    std::erase_if(all, [first](const Entry &entry) { return after(first, entry.when); });
    std::stable_sort(all.begin(), all.end(),
                     [](const Entry &a, const Entry &b) { return sortsBefore(a.when, b.when); });
    return all;
}

} // namespace lastrivet::calendar
