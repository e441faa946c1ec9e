// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/WorkshopReport.h"

#include "app/cli/PlainText.h"
#include "core/base/JsonWriter.h"

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

using workshop::Source;
using workshop::Spacing;

void writeSource(JsonWriter &json, const Source &source)
{
    json.member("source", source.document);
    json.member("verified", source.verified);
}

std::string sourceText(const Source &source)
{
    return fmt::format("{} ({})", source.document, source.verified);
}

void writeHeads(JsonWriter &json, const std::vector<workshop::ShopHead> &heads)
{
    json.key("shop_head");
    json.beginArray();
    for (const auto &head : heads) {
        json.beginObject();
        json.member("basis", head.basis);
        json.member("diameter_min", head.diameter_min);
        json.member("diameter_max", head.diameter_max);
        json.member("height_min", head.height_min);
        json.member("height_max", head.height_max);
        writeSource(json, head.source);
        json.endObject();
    }
    json.endArray();
}

void writeSpacings(JsonWriter &json, std::string_view key, const std::vector<Spacing> &spacings)
{
    json.key(key);
    json.beginArray();
    for (const auto &spacing : spacings) {
        json.beginObject();
        json.member("basis", spacing.rule);
        json.member("case", spacing.holds_for);
        json.member("distance", spacing.distance);
        json.member("diameters", spacing.diameters);
        writeSource(json, spacing.source);
        json.endObject();
    }
    json.endArray();
}

void writeDrills(JsonWriter &json, const std::vector<workshop::Drill> &drills)
{
    json.key("drill");
    drills.empty() ? json.null() : json.value(drills.front().drill);
    if (!drills.empty()) {
        json.member("drill_source", drills.front().source.document);
        json.member("drill_verified", drills.front().source.verified);
    }
    json.key("drills");
    json.beginArray();
    for (const auto &drill : drills) {
        json.beginObject();
        json.member("basis", drill.basis);
        json.member("drill", drill.drill);
        json.member("diameter", drill.diameter);
        writeSource(json, drill.source);
        json.endObject();
    }
    json.endArray();
}

void writeSheets(JsonWriter &json, const std::vector<workshop::ThinnestSheet> &sheets)
{
    json.key("countersink_sheet_min");
    json.beginArray();
    for (const auto &sheet : sheets) {
        json.beginObject();
        json.member("basis", sheet.rule);
        json.member("thickness", sheet.thickness);
        writeSource(json, sheet.source);
        json.endObject();
    }
    json.endArray();
}

std::string bandText(const std::optional<double> &least, const std::optional<double> &most)
{
    if (least && most)
        return fmt::format("{} to {}", *least, *most);
    if (most)
        return fmt::format("at most {}", *most);
    return least ? fmt::format("{}", *least) : std::string("not given");
}

void printSpacings(std::ostream &out, std::string_view what, const std::vector<Spacing> &spacings)
{
    fmt::print(out, "{}\n", what);
    for (const auto &spacing : spacings) {
        fmt::print(out, "  {} in  {}, {}: {}\n", spacing.distance, spaced(spacing.rule),
                   spacing.holds_for, sourceText(spacing.source));
    }
}

} // namespace

void writeJson(const workshop::Torque &torque, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("thread", torque.thread);
    json.member("nut", word(torque.nut));
    json.member("minimum", torque.minimum);
    json.member("maximum", torque.maximum);
    json.member("allowed_maximum", torque.allowed_maximum);
    json.member("unit", "in-lb");
    json.member("drag_added", torque.drag_added);
    writeSource(json, torque.source);
    json.endObject();
}

void print(const workshop::Torque &torque, std::ostream &out)
{
    fmt::print(out, "{}, {} nut: {} to {} in-lb, never more than {} in-lb\n", torque.thread,
               word(torque.nut), torque.minimum, torque.maximum, torque.allowed_maximum);
    if (torque.drag_added > 0)
        fmt::print(out, "with the drag of {} in-lb in all three\n", torque.drag_added);
    else
        fmt::print(out,
                   "without drag: read it off the wrench while the nut runs down, and add it\n");
    if (!torque.remark.empty())
        fmt::print(out, "Note: {}\n", torque.remark);
    fmt::print(out, "Source: {}\n", sourceText(torque.source));
    for (const auto &least : workshop::prevailingTorque(torque.thread)) {
        fmt::print(out, "A self-locking nut still has a drag of {} in-lb: {}, {}\n", least.minimum,
                   spaced(least.basis), sourceText(least.source));
    }
    out << workshopCaution;
}

void writeJson(const workshop::Rivet &rivet, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("length", rivet.length);
    json.member("length_code", rivet.length_code);
    json.member("length_source", rivet.length_source.document);
    writeDrills(json, rivet.drills);
    writeHeads(json, rivet.shop_heads);
    writeSheets(json, rivet.countersink);
    writeSpacings(json, "edge_distance", workshop::edgeDistances(rivet.diameter));
    writeSpacings(json, "pitch", workshop::pitches(rivet.diameter));
    json.endObject();
}

void print(const workshop::Rivet &rivet, std::ostream &out)
{
    fmt::print(out, "Length {} in, dash number {}: {}\n", rivet.length, rivet.length_code,
               sourceText(rivet.length_source));
    for (const auto &drill : rivet.drills) {
        fmt::print(out, "Drill {}{}: {}, {}\n", drill.drill,
                   drill.diameter ? fmt::format(" ({} in)", *drill.diameter) : "",
                   spaced(drill.basis), sourceText(drill.source));
    }
    for (const auto &head : rivet.shop_heads) {
        fmt::print(out, "Shop head {} in wide, {} in high: {}, {}\n",
                   bandText(head.diameter_min, head.diameter_max),
                   bandText(head.height_min, head.height_max), spaced(head.basis),
                   sourceText(head.source));
    }
    for (const auto &sheet : rivet.countersink)
        fmt::print(out, "Machine countersink from {} in of sheet: {}\n", sheet.thickness,
                   sourceText(sheet.source));
    printEdge(rivet.diameter, out);
}

void writeEdgeJson(double diameter, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("diameter", diameter);
    writeSpacings(json, "edge_distance", workshop::edgeDistances(diameter));
    writeSpacings(json, "pitch", workshop::pitches(diameter));
    json.endObject();
}

void printEdge(double diameter, std::ostream &out)
{
    printSpacings(out,
                  "Edge distance, from the middle of the hole:", workshop::edgeDistances(diameter));
    printSpacings(out, "Pitch:", workshop::pitches(diameter));
    out << workshopCaution;
}

void writeJson(const workshop::WireRun &run, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("gauge", run.gauge);
    json.member("drop", run.drop);
    json.member("ohms_per_foot", run.ohms_per_foot);
    json.member("most_amps", run.most_amps);
    writeSource(json, run.source);
    json.key("limits");
    json.beginArray();
    for (const auto &limit : workshop::dropLimits()) {
        json.beginObject();
        json.member("nominal", limit.nominal);
        json.member("continuous", limit.continuous);
        json.member("intermittent", limit.intermittent);
        writeSource(json, limit.source);
        json.endObject();
    }
    json.endArray();
    json.endObject();
}

void print(const workshop::WireRun &run, std::ostream &out)
{
    fmt::print(out, "AWG {}: {:.4f} V are lost; the wire carries at most {} A\nSource: {}\n",
               run.gauge, run.drop, run.most_amps, sourceText(run.source));
    for (const auto &limit : workshop::dropLimits())
        fmt::print(out, "At {} V: {} V all the time, {} V now and then: {}\n", limit.nominal,
                   limit.continuous, limit.intermittent, sourceText(limit.source));
    out << workshopCaution;
}

void writeJson(const workshop::WorkshopTable &table, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginArray();
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        json.beginObject();
        for (const auto &column : table.columns())
            json.member(column, table.text(row, column));
        json.endObject();
    }
    json.endArray();
}

void print(const workshop::WorkshopTable &table, std::ostream &out)
{
    for (std::size_t row = 0; row < table.rowCount(); ++row) {
        std::vector<std::string> cells;
        for (const auto &column : table.columns()) {
            const auto &cell = table.text(row, column);
            if (!cell.empty() && column != "source" && column != "verified")
                cells.push_back(fmt::format("{} {}", spaced(column), cell));
        }
        fmt::print(out, "{}: {}\n", fmt::join(cells, ", "), sourceText(table.source(row)));
    }
    out << workshopCaution;
}

void writeJson(const balance::Balance &sum, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member("weight", sum.weight);
    json.member("moment", sum.moment);
    json.member("cg", sum.cg);
    json.member("percent_mac", sum.percent_mac);
    json.endObject();
}

void print(const balance::Balance &sum, const std::string &weightUnit, const std::string &armUnit,
           std::ostream &out)
{
    fmt::print(out, "Weight {:.10g} {}, moment {:.10g} {}-{}\nCentre of gravity {:.4f} {}",
               sum.weight, weightUnit, sum.moment, weightUnit, armUnit, sum.cg, armUnit);
    if (sum.percent_mac)
        fmt::print(out, ", {:.2f} % MAC", *sum.percent_mac);
    fmt::print(out, "\n{}", workshopCaution);
}

} // namespace lastrivet::cli
