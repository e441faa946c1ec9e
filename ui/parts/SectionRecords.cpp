// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/SectionRecords.h"

#include "core/measuring/MeasurementLine.h"
#include "core/project/acts/BulletinActs.h"
#include "core/project/acts/DeviationActs.h"
#include "core/project/acts/SquawkActs.h"
#include "core/project/acts/WorkActs.h"
#include "ui/convert/NumberText.h"

#include <algorithm>
#include <tuple>
#include <type_traits>
#include <utility>

namespace lastrivet::ui::sections {

namespace {

/// The live records whose component is one of the parts, in the order of `key`.
template <class Record, class Key> Ids collect(const Records &records, const Parts &parts, Key key)
{
    // A key may be a text: it is made once for each record, not at each comparison.
    using Keyed = std::pair<std::invoke_result_t<Key, const Record &>, std::int64_t>;
    std::vector<Keyed> found;
    for (const Record &record : records.of<Record>()) {
        if (!record.withdrawn_on && parts.contains(record.component_id.value()))
            found.emplace_back(key(record), record.id.value());
    }
    std::ranges::sort(found);
    Ids ids;
    for (const Keyed &record : found)
        ids.push_back(record.second);
    return ids;
}

template <class Record> Ids byId(const Records &records, const Parts &parts)
{
    return collect<Record>(records, parts, [](const Record &record) { return record.id; });
}

/// Papers name several parts; those that name none belong to the whole aircraft.
template <class Paper, class IsOpen>
Ids papers(const Records &records, const Parts &parts, IsOpen isOpen)
{
    std::vector<const Paper *> found;
    for (const Paper &paper : records.of<Paper>()) {
        const bool isHere = (paper.component_ids.empty() && parts.contains(0)) ||
                            std::ranges::any_of(paper.component_ids, [&](Id<Component> part) {
                                return parts.contains(part.value());
                            });
        if (!paper.withdrawn_on && isHere)
            found.push_back(&paper);
    }
    std::ranges::stable_sort(found, {}, [&](const Paper *paper) { return !isOpen(*paper); });
    Ids ids;
    for (const Paper *paper : found)
        ids.push_back(paper->id.value());
    return ids;
}

} // namespace

Ids steps(const Records &records, const Parts &parts)
{
    return collect<Step>(records, parts, [](const Step &step) {
        return std::tuple(step.component_id, step.position.value_or(largestId));
    });
}

Ids sessions(const Records &records, const Parts &parts)
{
    auto ids = collect<WorkSession>(records, parts, [](const WorkSession &session) {
        return session.began ? session.began->text() : std::string();
    });
    std::ranges::reverse(ids);
    return ids;
}

Ids squawks(const Records &records, const Parts &parts)
{
    return collect<Squawk>(records, parts, [](const Squawk &squawk) {
        return std::tuple(!acts::isOpen(squawk), squawk.severity, squawk.id);
    });
}

Ids closings(const Records &records, const Parts &parts)
{
    Ids ids;
    for (const Closing &closing : records.closings) {
        const bool isInside = std::ranges::any_of(
            closing.encloses, [&](Id<Component> part) { return parts.contains(part.value()); });
        if (!closing.withdrawn_on && (isInside || parts.contains(closing.component_id.value())))
            ids.push_back(closing.id.value());
    }
    return ids;
}

Ids deviations(const Records &records, const Parts &parts)
{
    return papers<Deviation>(records, parts, [](const Deviation &deviation) {
        using enum acts::DeviationStage;
        const auto stage = acts::stageOf(deviation);
        return stage != Approved && stage != Rejected && stage != Undone;
    });
}

Ids bulletins(const Records &records, const Parts &parts)
{
    return papers<Bulletin>(records, parts, [](const Bulletin &bulletin) {
        return !bulletin.complied_on && bulletin.applies.value_or(true);
    });
}

Ids fasteners(const Records &records, const Parts &parts)
{
    return byId<Fastener>(records, parts);
}

Ids measurements(const Records &records, const Parts &parts)
{
    return byId<Measurement>(records, parts);
}

Ids partLines(const Records &records, const Parts &parts)
{
    return byId<PartLine>(records, parts);
}

Ids materials(const Records &records, const Parts &parts)
{
    return byId<MaterialUse>(records, parts);
}

std::int64_t newStep(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addStep(edit, part, words).value();
}

std::int64_t newSquawk(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addSquawk(edit, Squawk{.component_id = part, .title = words}).value();
}

std::int64_t newMeasurement(Edit &edit, Id<Component> part, const std::string &words)
{
    Measurement measurement = *measuring::readMeasurementLine(words, decimalSign());
    measurement.component_id = part;
    return edit.put(std::move(measurement)).value();
}

std::int64_t newDeviation(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addDeviation(edit, part, words).value();
}

std::int64_t newPartLine(Edit &edit, Id<Component> part, const std::string &words)
{
    return edit.put(PartLine{.component_id = part, .name = words, .quantity = 1}).value();
}

std::int64_t newBulletin(Edit &edit, Id<Component> part, const std::string &words)
{
    return acts::addBulletin(edit, part, words).value();
}

} // namespace lastrivet::ui::sections
