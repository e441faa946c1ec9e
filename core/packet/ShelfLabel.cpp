// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/ShelfLabel.h"

#include "core/packet/PartOrder.h"
#include "core/readiness/CalibrationAt.h"

#include <algorithm>

namespace lastrivet::packet {

namespace {

template <class Record> std::vector<const Record *> byName(const Table<Record> &table)
{
    std::vector<const Record *> records;
    for (const Record &record : table) {
        if (!record.withdrawn_on)
            records.push_back(&record);
    }
    std::stable_sort(records.begin(), records.end(),
                     [](const Record *a, const Record *b) { return a->name < b->name; });
    return records;
}

ShelfLabel labelOf(const Component &part)
{
    ShelfLabel label{{RecordType::Component, part.id.value()}, part.code, part.name, {}};
    if (!part.shelf.empty())
        label.lines.push_back({"{0}", {part.shelf}});
    if (!part.part_number.empty())
        label.lines.push_back({"part number {0}", {part.part_number}});
    return label;
}

ShelfLabel labelOf(const MaterialLot &lot)
{
    ShelfLabel label{{RecordType::MaterialLot, lot.id.value()}, lot.lot_number, lot.name, {}};
    if (lot.expires_on)
        label.lines.push_back({"use before {0}", {lot.expires_on->text()}});
    if (lot.opened_on)
        label.lines.push_back({"opened {0}", {lot.opened_on->text()}});
    if (!lot.storage.empty())
        label.lines.push_back({"{0}", {lot.storage}});
    return label;
}

ShelfLabel labelOf(const Tool &tool)
{
    // A drawer is looked for by what is in it, not by its number.
    ShelfLabel label{{RecordType::Tool, tool.id.value()}, {}, tool.name, {}};
    if (!tool.serial_number.empty())
        label.lines.push_back({"serial number {0}", {tool.serial_number}});
    const Tool::Calibration *newest = readiness::newestCalibration(tool);
    if (newest && newest->due_on)
        label.lines.push_back({"calibration due {0}", {newest->due_on->text()}});
    else if (tool.needs_calibration)
        label.lines.push_back({"no calibration on record", {}});
    return label;
}

} // namespace

std::vector<ShelfLabel> partLabels(const Records &records, bool onlyThoseWithShelf)
{
    std::vector<ShelfLabel> labels;
    for (const PartInOrder &part : partsInOrder(records)) {
        if (!onlyThoseWithShelf || !part.part->shelf.empty())
            labels.push_back(labelOf(*part.part));
    }
    return labels;
}

std::vector<ShelfLabel> lotLabels(const Records &records)
{
    std::vector<ShelfLabel> labels;
    for (const MaterialLot *lot : byName(records.material_lots))
        labels.push_back(labelOf(*lot));
    return labels;
}

std::vector<ShelfLabel> toolLabels(const Records &records)
{
    std::vector<ShelfLabel> labels;
    for (const Tool *tool : byName(records.tools))
        labels.push_back(labelOf(*tool));
    return labels;
}

} // namespace lastrivet::packet
