// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv/SquawkListCsv.h"

#include "core/entry/PartFinder.h"
#include "core/exchange/WholeFile.h"
#include "core/exchange/csv/CsvExport.h"
#include "core/project/acts/SquawkActs.h"
#include "core/records/Description.h"

#include <ostream>

namespace lastrivet::exchange {

namespace {

using readiness::ListedSquawk;

std::string partOf(const Squawk &squawk, const Records &records)
{
    const Component *part = records.find(squawk.component_id);
    return part ? entry::spokenName(*part) : std::string();
}

std::string closingsOf(const ListedSquawk &listed, const Records &records)
{
    std::string titles;
    for (const Id<Closing> id : listed.closings) {
        if (const Closing *closing = records.find(id))
            titles += (titles.empty() ? "" : "; ") + closing->title;
    }
    return titles;
}

} // namespace

void writeSquawkList(const Records &records, const std::vector<ListedSquawk> &list, Moment asOf,
                     std::ostream &out)
{
    const auto &fields = describe(RecordType::Squawk).fields;
    for (const Field &field : fields)
        out << field.name << ',';
    out << "part,state,reachable,closings\r\n";
    for (const ListedSquawk &listed : list) {
        const Squawk &squawk = *records.find(listed.id);
        writeCsvFields(fields, &squawk, out);
        out << ',' << csvCell(partOf(squawk, records)) << ',' << acts::progressWord(squawk, asOf)
            << ',' << word(listed.reachable) << ',' << csvCell(closingsOf(listed, records))
            << "\r\n";
    }
}

void writeSquawkListFile(const Records &records, const std::vector<ListedSquawk> &list, Moment asOf,
                         const std::filesystem::path &file)
{
    writeWholeFile(file, [&](std::ostream &out) { writeSquawkList(records, list, asOf, out); });
}

} // namespace lastrivet::exchange
