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

void writeMinutes(JsonWriter &json, std::string_view name,
                  const forecast::Range<std::int64_t> &minutes)
{
    writeRange(json, name, minutes, [](std::int64_t value) { return value; });
}

void writeFinish(JsonWriter &json, const std::optional<forecast::Range<Moment>> &finish)
{
    if (finish) {
        writeRange(json, "finish", *finish, [](Moment day) { return day.text(); });
    } else {
        json.key("finish");
        json.null();
    }
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
    json.member("excluded_squawks", left.excluded_squawks);
    json.endObject();
}

void writePart(JsonWriter &json, Id<Component> id, const Records &records)
{
    json.key("component");
    id ? json.value(id.value()) : json.null();
    if (const auto *part = records.find(id)) {
        if (!part->code.empty())
            json.member("code", part->code);
        json.member("name", part->name);
    }
}

void writeAssembly(JsonWriter &json, const forecast::AssemblyForecast &assembly,
                   const Records &records)
{
    json.beginObject();
    writePart(json, assembly.assembly, records);
    writeMinutes(json, "minutes_to_go", assembly.minutes_to_go);
    json.member("share_of_spread", assembly.share_of_spread);
    json.endObject();
}

void writeLook(JsonWriter &json, const forecast::Look &look)
{
    json.beginObject();
    json.member("day", look.day.text());
    json.member("steps_left", look.steps_left);
    json.member("minutes_so_far", look.minutes_so_far);
    writeMinutes(json, "minutes_to_go", look.minutes_to_go);
    writeFinish(json, look.finish);
    json.member("steps_since", look.steps_since);
    writeMinutes(json, "said", look.said);
    json.member("came", look.came);
    json.endObject();
}

void writeLookBack(JsonWriter &json, const forecast::LookBack &told)
{
    json.key("look_back");
    json.beginObject();
    json.member("with_outcome", told.with_outcome);
    json.member("within_p50", told.within_p50);
    json.member("within_p80", told.within_p80);
    json.key("finished_on");
    told.finished_on ? json.value(told.finished_on->text()) : json.null();
    json.key("months");
    json.beginArray();
    for (const auto &look : told.looks)
        writeLook(json, look);
    json.endArray();
    json.endObject();
}

} // namespace

void writeJson(const forecast::Forecast &forecast, const forecast::LookBack *lookBack,
               const Records &records, std::ostream &out)
{
    {
        JsonWriter json(out, JsonWriter::Layout::Indented);
        json.beginObject();
        json.member("as_of", forecast.as_of.text());
        json.member("seed", forecast.seed);
        writeWork(json, forecast.work_left);
        writeMinutes(json, "minutes_to_go", forecast.minutes_to_go);
        writeFinish(json, forecast.finish);
        json.member("needs_hours_per_week", forecast.needs_hours_per_week);
        json.key("assemblies");
        json.beginArray();
        for (const auto &assembly : forecast.assemblies)
            writeAssembly(json, assembly, records);
        json.endArray();
        json.key("without");
        json.beginArray();
        for (const auto id : forecast.without) {
            json.beginObject();
            writePart(json, id, records);
            json.endObject();
        }
        json.endArray();
        if (lookBack)
            writeLookBack(json, *lookBack);
        json.endObject();
    }
    out << '\n';
}

} // namespace lastrivet::answers
