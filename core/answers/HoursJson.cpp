// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/HoursJson.h"

#include "core/base/JsonWriter.h"

#include <ostream>

namespace lastrivet::answers {

namespace {

void writeFields(JsonWriter &json, const hours::Total &total)
{
    json.member("minutes", total.minutes.count());
    json.member("worker_minutes", total.worker_minutes.count());
    json.member("sessions", total.sessions);
}

void writeTotal(JsonWriter &json, std::string_view name, const hours::Total &total)
{
    json.key(name);
    json.beginObject();
    writeFields(json, total);
    json.endObject();
}

/// An array with an object per row, which `body` fills.
template <class Rows, class Body>
void writeRows(JsonWriter &json, std::string_view name, const Rows &rows, Body &&body)
{
    json.key(name);
    json.beginArray();
    for (const auto &row : rows) {
        json.beginObject();
        body(row);
        json.endObject();
    }
    json.endArray();
}

void writePlaces(JsonWriter &json, const hours::Totals &totals, const Records &records)
{
    writeRows(json, "components", totals.components, [&](const hours::ComponentHours &row) {
        json.member("id", row.id.value());
        if (const Component *part = records.find(row.id)) {
            if (!part->code.empty())
                json.member("code", part->code);
            json.member("name", part->name);
        }
        writeTotal(json, "own", row.own);
        writeTotal(json, "with_below", row.with_below);
    });
    writeTotal(json, "unassigned", totals.unassigned);
}

void writePeople(JsonWriter &json, const hours::Totals &totals, const Records &records)
{
    writeRows(json, "people", totals.people, [&](const hours::PersonHours &row) {
        json.key("id");
        row.id ? json.value(row.id.value()) : json.null();
        if (const Person *person = records.find(row.id))
            json.member("name", person->name);
        json.member("worker_minutes", row.worker_minutes.count());
        json.member("sessions", row.sessions);
    });
}

void writePeriods(JsonWriter &json, const hours::Totals &totals)
{
    writeRows(json, "weeks", totals.weeks, [&](const hours::WeekHours &row) {
        json.member("week", fmt::format("{:04}-W{:02}", row.year, row.week));
        writeFields(json, row.total);
    });
    writeRows(json, "months", totals.months, [&](const hours::MonthHours &row) {
        json.member("month", fmt::format("{:04}-{:02}", row.year, row.month));
        writeFields(json, row.total);
    });
}

} // namespace

void writeJson(const hours::Totals &totals, const Records &records, std::ostream &out)
{
    {
        JsonWriter json{out};
        json.beginObject();
        writeTotal(json, "total", totals.total);
        writeTotal(json, "rework", totals.rework);
        writePlaces(json, totals, records);
        writeRows(json, "kinds", totals.kinds, [&](const hours::KindHours &row) {
            json.member("kind", word(row.kind));
            writeFields(json, row.total);
        });
        writePeople(json, totals, records);
        writePeriods(json, totals);
        json.endObject();
    }
    out.put('\n');
}

} // namespace lastrivet::answers
