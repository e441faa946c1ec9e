// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/PlainRecords.h"

#include "core/exchange/csv/CsvExport.h"
#include "core/storage/ReadMe.h"

#include <algorithm>

namespace lastrivet::exchange {

namespace fs = std::filesystem;
namespace chr = std::chrono;

namespace {

constexpr chr::days aYear{365};
constexpr chr::days aMonth{30};

bool wasWorkedBefore(const Records &records, chr::sys_days day)
{
    return std::any_of(records.work_sessions.begin(), records.work_sessions.end(),
                       [=](const WorkSession &session) {
                           return !session.withdrawn_on && session.began &&
                                  session.began->day() < day;
                       });
}

} // namespace

fs::path logbookIn(const fs::path &projectFolder)
{
    return projectFolder / "logbook.pdf";
}

void writePlainRecords(const Records &records, const fs::path &projectFolder)
{
    storage::writeReadMe(storage::ProjectFolder(projectFolder), records.project.name);
    writeCsvFolder(records, projectFolder / "lists");
}

bool arePlainRecordsDue(const Records &records, const fs::path &projectFolder, Moment today)
{
    std::error_code none;
    const auto written = fs::last_write_time(logbookIn(projectFolder), none);
    if (none)
        return wasWorkedBefore(records, today.day() - aMonth);
    return chr::floor<chr::days>(chr::file_clock::to_sys(written)) + aYear < today.day();
}

} // namespace lastrivet::exchange
