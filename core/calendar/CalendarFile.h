// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/calendar/Calendar.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {
class Project;
}

namespace lastrivet::calendar {

/// What a calendar file says besides its entries.
struct FileFacts {
    /// The same for all files of a project and no other's: entries are known again by it.
    std::string project_key;
    std::string project_name;
    /// When the file is made, in workshop time.
    Moment made_on;
    /// Of the workshop; times are written in UTC, or without zone when it is not known.
    std::string time_zone;
    /// Days before an entry on which a calendar should ring.
    std::optional<int> alarm_days;
};

/// The facts of an open project; the key comes from the first row of its journal, which never
/// changes.
FileFacts fileFacts(const Project &project, std::optional<int> alarmDays);

/// A calendar as RFC 5545 writes it: UTF-8, lines that end in CR LF and are folded at 75 octets.
/// `entries` must not be empty, because the standard knows no empty calendar.
std::string calendarText(const std::vector<Entry> &entries, const FileFacts &facts);

/// Writes the file, whole and durable or not at all; throws `NotSaved` with one sentence.
void writeCalendar(const std::vector<Entry> &entries, const FileFacts &facts,
                   const std::filesystem::path &place);

/// One content line: "SUMMARY:" and the text with its commas, semicolons, backslashes and line
/// breaks escaped, folded between characters, with its line end.
std::string contentLine(std::string_view name, std::string_view text);

} // namespace lastrivet::calendar
