// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/PlainRecords.h"

#include "core/base/CaseFold.h"
#include "core/base/Error.h"
#include "core/exchange/csv/CsvExport.h"
#include "core/storage/ReadMe.h"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <system_error>

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

bool isOwnPaper(const fs::path &file)
{
    static constexpr std::array<std::string_view, 3> own{"lists", "logbook.pdf",
                                                         "photos-of-part.sql"};
    const fs::path plain = file.lexically_normal();
    // In lower case, since some file systems do not distinguish it from upper case.
    const std::string first = plain.empty() ? std::string() : asciiLower(plain.begin()->string());
    return std::find(own.begin(), own.end(), first) != own.end();
}

void writePlainRecords(const Records &records, const fs::path &projectFolder)
{
    const fs::path lists = projectFolder / "lists";
    std::error_code none;
    // It may have come with a stranger's folder, and lead to where others of these names lie.
    if (fs::is_symlink(fs::symlink_status(lists, none)))
        throw NotSaved(Message{"{0} is a link to another place, where the lists could take the "
                               "place of other files; remove it first.",
                               {lists.string()}});
    storage::writeReadMe(storage::ProjectFolder(projectFolder), records.project.name);
    writeCsvFolder(records, lists);
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
