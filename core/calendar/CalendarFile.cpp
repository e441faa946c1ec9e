// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/calendar/CalendarFile.h"

#include "core/base/Error.h"
#include "core/base/Utf8.h"
#include "core/calendar/UtcTime.h"
#include "core/evidence/files/FileBehind.h"
#include "core/exchange/WholeFile.h"
#include "core/project/Project.h"

#include <fmt/format.h>

#include <array>
#include <chrono>
#include <ostream>

namespace lastrivet::calendar {

namespace {

constexpr std::size_t mostOctets = 75;

std::string_view word(Kind kind)
{
    constexpr std::array<std::string_view, 3> words{"INSPECTION", "EXPIRY", "CALIBRATION"};
    return words[std::size_t(kind)];
}

/// RFC 5545, 3.3.11: TEXT; other control characters are not allowed in it.
std::string escaped(std::string_view text)
{
    std::string out;
    for (const char c : text) {
        if (c == '\n')
            out += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            (out += '\\') += c;
        else if (static_cast<unsigned char>(c) >= 0x20 && c != 0x7f)
            out += c;
        else if (c == '\t')
            out += ' ';
    }
    return out;
}

/// RFC 5545, 3.1: a line goes on after CR LF and a space, which counts as one of its octets.
std::string folded(std::string_view line)
{
    std::string out;
    std::size_t room = mostOctets;
    while (line.size() > room) {
        std::size_t end = room;
        while (end > 1 && continuesCharacter(line[end]))
            --end;
        out.append(line.substr(0, end)).append("\r\n ");
        line.remove_prefix(end);
        room = mostOctets - 1;
    }
    return out.append(line).append("\r\n");
}

std::string digitsOf(Moment moment)
{
    const std::chrono::year_month_day day{moment.day()};
    return fmt::format("{:04}{:02}{:02}", int(day.year()), unsigned(day.month()),
                       unsigned(day.day()));
}

/// RFC 5545, 3.3.5: a date with UTC time, or floating where the zone is not known.
std::string timeOf(Moment moment, std::string_view zone)
{
    const std::optional<Moment> utc = inUtc(moment, zone);
    const Moment written = utc.value_or(moment);
    const int minute = written.hasTime() ? written.minuteOfDay() : 0;
    return fmt::format("{}T{:02}{:02}00{}", digitsOf(written), minute / 60, minute % 60,
                       utc ? "Z" : "");
}

/// DTSTAMP has to be in UTC (RFC 5545, 3.8.7.2); a workshop without zone keeps its own time.
std::string stampOf(const FileFacts &facts)
{
    std::string stamp = timeOf(facts.made_on, facts.time_zone);
    return stamp.ends_with('Z') ? stamp : stamp + "Z";
}

/// RFC 5545, 3.6.6: an alarm that shows its text.
std::string alarm(const Entry &entry, int days)
{
    return "BEGIN:VALARM\r\nACTION:DISPLAY\r\n" + contentLine("DESCRIPTION", entry.summary) +
           fmt::format("TRIGGER:-P{}D\r\nEND:VALARM\r\n", days);
}

std::string eventText(const Entry &entry, const FileFacts &facts)
{
    std::string text = "BEGIN:VEVENT\r\n";
    text += contentLine("UID", fmt::format("lastrivet-{}-{}-{}", facts.project_key,
                                           lastrivet::word(entry.record.type), entry.record.id));
    text += "DTSTAMP:" + stampOf(facts) + "\r\n";
    if (entry.when.hasTime())
        text += "DTSTART:" + timeOf(entry.when, facts.time_zone) + "\r\n";
    else
        text += "DTSTART;VALUE=DATE:" + digitsOf(entry.when) + "\r\n";
    text += contentLine("SUMMARY", entry.summary);
    if (!entry.description.empty())
        text += contentLine("DESCRIPTION", entry.description);
    if (!entry.place.empty())
        text += contentLine("LOCATION", entry.place);
    text += fmt::format("CATEGORIES:{}\r\n", word(entry.kind));
    // What is only due blocks nobody's day.
    if (entry.kind != Kind::Inspection)
        text += "TRANSP:TRANSPARENT\r\n";
    if (facts.alarm_days)
        text += alarm(entry, *facts.alarm_days);
    return text + "END:VEVENT\r\n";
}

} // namespace

std::string contentLine(std::string_view name, std::string_view text)
{
    return folded(fmt::format("{}:{}", name, escaped(text)));
}

std::string calendarText(const std::vector<Entry> &entries, const FileFacts &facts)
{
    std::string text = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"
                       "PRODID:-//Lastrivet//Lastrivet " LASTRIVET_VERSION "//EN\r\n"
                       "CALSCALE:GREGORIAN\r\n";
    text += contentLine("NAME", facts.project_name);
    for (const Entry &entry : entries)
        text += eventText(entry, facts);
    return text + "END:VCALENDAR\r\n";
}

void writeCalendar(const std::vector<Entry> &entries, const FileFacts &facts,
                   const std::filesystem::path &place)
{
    const auto file = evidence::fileBehind(place);
    if (entries.empty())
        throw NotSaved("No visit is planned, and no expiry or calibration falls due or did in the "
                       "last 30 days: there is nothing to put into a calendar.");
    static_assert(keptDays == 30);
    const std::string text = calendarText(entries, facts);
    exchange::writeWholeFile(file, [&](std::ostream &out) { out << text; });
}

FileFacts fileFacts(const Project &project, std::optional<int> alarmDays)
{
    constexpr std::size_t keyDigits = 16;
    const std::string oldest = project.oldestJournalHash();
    const ProjectFacts &facts = project.records()->project;
    return {oldest.empty() ? "new" : oldest.substr(0, keyDigits), facts.name, project.now(),
            facts.time_zone, alarmDays};
}

} // namespace lastrivet::calendar
