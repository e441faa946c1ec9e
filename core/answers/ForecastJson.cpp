// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/ForecastJson.h"

#include "core/base/JsonWriter.h"

#include <ostream>

namespace lastrivet::answers {

namespace {

template <class Value, class Write>
void writeRange(JsonWriter &json, std::string_view name, const forecast::Range<Value> &range,
                Write &&write)
{
    json.key(name);
    json.beginObject();
    json.member("p10", write(range.p10));
    json.member("p50", write(range.p50));
    json.member("p80", write(range.p80));
    json.member("p90", write(range.p90));
    json.endObject();
}

void writeMinutes(JsonWriter &json, const forecast::Range<std::int64_t> &minutes)
{
    writeRange(json, "minutes_to_go", minutes, [](std::int64_t value) { return value; });
}

void writeWork(JsonWriter &json, const forecast::WorkLeft &left)
{
    json.key("work_left");
    json.beginObject();
    json.member("steps", left.steps);
    json.member("squawks", left.squawks);
    json.member("guessed_estimates", left.guessed_estimates);
    json.member("squawks_without_estimate", left.squawks_without_estimate);
    json.member("excluded_steps", left.excluded_steps);
    json.endObject();
}

void writeAssembly(JsonWriter &json, const forecast::AssemblyForecast &assembly,
                   const Records &records)
{
    json.beginObject();
    json.key("component");
    assembly.assembly ? json.value(assembly.assembly.value()) : json.null();
    if (const auto *part = records.find(assembly.assembly)) {
        if (!part->code.empty())
            json.member("code", part->code);
        json.member("name", part->name);
    }
    writeMinutes(json, assembly.minutes_to_go);
    json.member("share_of_spread", assembly.share_of_spread);
    json.endObject();
}

} // namespace

void writeJson(const forecast::Forecast &forecast, const Records &records, std::ostream &out)
{
    {
        JsonWriter json(out, JsonWriter::Layout::Indented);
        json.beginObject();
        json.member("as_of", forecast.as_of.text());
        json.member("seed", forecast.seed);
        writeWork(json, forecast.work_left);
        writeMinutes(json, forecast.minutes_to_go);
        if (forecast.finish) {
            writeRange(json, "finish", *forecast.finish, [](Moment day) { return day.text(); });
        } else {
            json.key("finish");
            json.null();
        }
        json.member("needs_hours_per_week", forecast.needs_hours_per_week);
        json.key("assemblies");
        json.beginArray();
        for (const auto &assembly : forecast.assemblies)
            writeAssembly(json, assembly, records);
        json.endArray();
        json.endObject();
    }
    out << '\n';
}

} // namespace lastrivet::answers
