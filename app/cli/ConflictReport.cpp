// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/ConflictReport.h"

#include "app/cli/PlainText.h"
#include "core/base/Clock.h"
#include "core/records/Designation.h"

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

void writeText(JsonWriter &json, std::string_view key, const std::string &text)
{
    json.key(key);
    text.empty() ? json.null() : json.value(text);
}

void writeChange(JsonWriter &json, std::string_view key, const MergeConflict::Change &change)
{
    json.key(key);
    if (change.change_id.empty())
        return json.null();
    json.beginObject();
    json.member("change_id", change.change_id);
    writeText(json, "who", change.who);
    json.member("label", change.label);
    json.member("stamp", change.stamp);
    json.endObject();
}

std::string valueText(const std::optional<std::string> &value)
{
    constexpr std::size_t longest = 60;
    return value ? shortened(onOneLine(*value), longest) : "nothing";
}

std::string byWhom(const Records &records, const MergeConflict::Change &change)
{
    if (change.stamp == 0)
        return "by an unknown change";
    const std::chrono::sys_time<std::chrono::milliseconds> stamp{
        std::chrono::milliseconds(change.stamp)};
    return fmt::format("{}, “{}”, {}", change.who.empty() ? "somebody" : onOneLine(change.who),
                       onOneLine(change.label),
                       localMoment(stamp, records.project.time_zone).text());
}

} // namespace

void writeConflict(JsonWriter &json, const MergeConflict &conflict)
{
    json.beginObject();
    json.member("id", conflict.id);
    json.member("kind", word(conflict.kind));
    json.member("record", word(conflict.record.type));
    json.member("record_id", conflict.record.id);
    writeText(json, "field", conflict.field);
    json.key("item");
    conflict.item ? json.value(*conflict.item) : json.null();
    json.key("kept");
    json.raw(conflict.kept.value_or("null"));
    json.key("lost");
    json.raw(conflict.lost.value_or("null"));
    writeChange(json, "kept_by", conflict.kept_by);
    writeChange(json, "lost_by", conflict.lost_by);
    writeText(json, "reason", conflict.reason);
    json.key("decision");
    conflict.decision ? json.value(word(*conflict.decision)) : json.null();
    json.endObject();
}

void printConflict(std::ostream &out, const Records &records, const MergeConflict &conflict)
{
    fmt::print(out, "{}  {}\n", conflict.id, onOneLine(designation(records, conflict.record)));
    switch (conflict.kind) {
    case ConflictKind::Value:
        fmt::print(out, "   {}: {} stands ({})\n", conflict.field, valueText(conflict.kept),
                   byWhom(records, conflict.kept_by));
        fmt::print(out, "   {}: {} lost ({})\n", conflict.field, valueText(conflict.lost),
                   byWhom(records, conflict.lost_by));
        break;
    case ConflictKind::Existence:
        fmt::print(out,
                   "   taken back in one copy ({}), and it stays, because the other went on "
                   "with it\n",
                   byWhom(records, conflict.lost_by));
        break;
    case ConflictKind::SetAside:
        fmt::print(out, "   left out: {}\n   {}\n", byWhom(records, conflict.lost_by),
                   onOneLine(conflict.reason));
        break;
    }
    if (conflict.decision)
        fmt::print(out, "   decided: {}\n", word(*conflict.decision));
}

} // namespace lastrivet::cli
