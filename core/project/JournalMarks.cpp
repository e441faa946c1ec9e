// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/JournalMarks.h"

#include "core/base/Clock.h"
#include "core/records/Description.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <nlohmann/json.hpp>
#include <optional>

namespace lastrivet {

namespace {

using Json = nlohmann::json;

/// Whether a field says on which day somebody did or saw something.
bool tellsWhatHappened(const Field &field)
{
    static constexpr std::array<std::string_view, 8> others{
        "planned_on", "planned_for", "expected_on", "due_on",
        "expires_on", "issued_on",   "taken_on",    "imported_on"};
    return field.type == FieldType::Moment && std::ranges::find(others, field.name) == others.end();
}

std::optional<Moment> momentIn(const Json &value)
{
    return value.is_string() ? Moment::parse(value.get<std::string>()) : std::nullopt;
}

Json parsed(const std::string &text)
{
    return Json::parse(text, nullptr, false);
}

class Search {
public:
    Search(Moment written, std::int64_t allowedDays, std::vector<LateDate> &found)
        : m_written(written)
        , m_allowedDays(allowedDays)
        , m_found(found)
    {
    }

    void look(RecordRef record, const FieldChange &change) const
    {
        const Field *field = describe(record.type).find(change.name);
        if (!field)
            return;
        if (field->rows)
            lookInRows(record, *field, change);
        else if (tellsWhatHappened(*field) && change.to)
            note(record, change.name, momentIn(parsed(*change.to)));
    }

private:
    void lookInRows(RecordRef record, const Field &list, const FieldChange &change) const
    {
        for (const Field &field : list.rows->fields) {
            if (!tellsWhatHappened(field))
                continue;
            const auto before = values(change.removed, field.name);
            for (const Json &value : values(change.added, field.name)) {
                // A row that was written anew for something else keeps its day.
                if (std::ranges::find(before, value) == before.end())
                    note(record, change.name + "." + std::string(field.name), momentIn(value));
            }
        }
    }

    static std::vector<Json> values(const std::vector<std::string> &rows, std::string_view name)
    {
        std::vector<Json> list;
        for (const std::string &text : rows) {
            if (const Json row = parsed(text); row.is_object() && row.contains(name))
                list.push_back(row.at(std::string(name)));
        }
        return list;
    }

    void note(RecordRef record, std::string field, const std::optional<Moment> &day) const
    {
        if (day && (m_written.day() - day->day()).count() > m_allowedDays)
            m_found.push_back({record, std::move(field), *day});
    }

    Moment m_written;
    std::int64_t m_allowedDays;
    std::vector<LateDate> &m_found;
};

} // namespace

bool isWrittenDown(const JournalLine &row)
{
    if (!row.undoes.empty())
        return false;
    if (row.kind == ChangeKind::Carried)
        return !row.label.starts_with(importLabel);
    return row.kind == ChangeKind::Change || row.kind == ChangeKind::Automatic;
}

std::vector<LateDate> lateDates(const JournalEntry &row, const std::vector<JournalChange> &changes,
                                std::string_view zone, std::int64_t allowedDays)
{
    std::vector<LateDate> found;
    if (!isWrittenDown(row))
        return found;
    using namespace std::chrono;
    const auto written = localMoment(sys_time<milliseconds>(milliseconds(row.stamp)), zone);
    const Search search(written, allowedDays, found);
    for (const JournalChange &change : changes) {
        for (const FieldChange &field : change.fields)
            search.look(change.record, field);
    }
    return found;
}

bool isPushedAhead(const JournalEntry &row, const JournalEntry &before)
{
    // What a merge carried over is written at once, and has no time of its own.
    const bool isOwn = row.kind != ChangeKind::Carried && before.kind != ChangeKind::Carried;
    return isOwn && row.stamp > before.stamp && row.stamp - 1 == before.stamp;
}

} // namespace lastrivet
