// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/Calendar.h"

#include "core/packet/InWords.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace lastrivet::calendar {

namespace {

std::string withCapital(std::string text)
{
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = char(text[0] - 'a' + 'A');
    return text;
}

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

Entry entryOf(const Records &records, const Inspection &visit)
{
    const std::string closings = closingsOf(records, visit);
    Entry entry{Kind::Inspection, {RecordType::Inspection, visit.id.value()}, *visit.planned_for,
                withCapital(english(packet::inWords(visit.kind))), {}, visit.place};
    if (!closings.empty())
        entry.summary += ": " + closings;
    addLine(entry.description, packet::personName(records, visit.inspector_id));
    addLine(entry.description, visit.reference);
    return entry;
}

Entry entryOf(const MaterialLot &lot)
{
    Entry entry{Kind::Expiry, {RecordType::MaterialLot, lot.id.value()}, lot.expires_on->dayOnly(),
                fmt::format("Expires: {}", lot.name), {}, lot.storage};
    if (!lot.lot_number.empty())
        entry.summary += fmt::format(", lot {}", lot.lot_number);
    addLine(entry.description, lot.specification);
    return entry;
}

/// The day on which the newest calibration runs out.
std::optional<Moment> dueOf(const Tool &tool)
{
    std::optional<Moment> due;
    for (const Tool::Calibration &calibration : tool.calibrations) {
        if (calibration.due_on && (!due || after(*calibration.due_on, *due)))
            due = calibration.due_on;
    }
    return due;
}

Entry entryOf(const Tool &tool, Moment due)
{
    Entry entry{Kind::Calibration, {RecordType::Tool, tool.id.value()}, due.dayOnly(),
                fmt::format("Calibration due: {}", tool.name), {}, {}};
    if (!tool.serial_number.empty())
        addLine(entry.description, fmt::format("Serial number {}", tool.serial_number));
    return entry;
}

bool isPlanned(const Inspection &visit)
{
    return !visit.withdrawn_on && visit.planned_for && !visit.held_on && !visit.completed_on &&
           !visit.cancelled_on;
}

} // namespace

std::vector<Entry> entries(const Records &records, Moment today)
{
    std::vector<Entry> all;
    for (const Inspection &visit : records.inspections) {
        if (isPlanned(visit))
            all.push_back(entryOf(records, visit));
    }
    for (const MaterialLot &lot : records.material_lots) {
        if (!lot.withdrawn_on && lot.expires_on)
            all.push_back(entryOf(lot));
    }
    for (const Tool &tool : records.tools) {
        const std::optional<Moment> due = dueOf(tool);
        if (!tool.withdrawn_on && tool.needs_calibration && due)
            all.push_back(entryOf(tool, *due));
    }
    const Moment first = today.plusDays(-keptDays).value_or(today);
    std::erase_if(all, [first](const Entry &entry) { return after(first, entry.when); });
    std::stable_sort(all.begin(), all.end(), [](const Entry &a, const Entry &b) {
        return sortsBefore(a.when, b.when);
    });
    return all;
}

} // namespace lastrivet::calendar
