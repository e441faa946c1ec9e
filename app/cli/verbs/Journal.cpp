// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/project/JournalMarks.h"
#include "core/records/Description.h"
#include "core/records/Designation.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

#include <functional>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    bool json = false;
};

void writeTexts(JsonWriter &json, std::string_view name, const std::vector<std::string> &values)
{
    json.key(name);
    json.beginArray();
    for (const std::string &value : values)
        json.raw(value);
    json.endArray();
}

void writeField(JsonWriter &json, const Field *field, const FieldChange &change)
{
    json.key(change.name);
    json.beginObject();
    if (field && field->isCollection()) {
        writeTexts(json, "added", change.added);
        writeTexts(json, "removed", change.removed);
    } else {
        json.key("from");
        json.raw(change.from.value_or("null"));
        json.key("to");
        json.raw(change.to.value_or("null"));
    }
    json.endObject();
}

void writeChange(JsonWriter &json, const JournalChange &change)
{
    json.beginObject();
    json.member("record", word(change.record.type));
    json.member("id", change.record.id);
    json.member("kind", word(change.kind));
    json.key("fields");
    json.beginObject();
    for (const FieldChange &field : change.fields)
        writeField(json, describe(change.record.type).find(field.name), field);
    json.endObject();
    json.endObject();
}

/// A row with what follows only from the other rows and the records.
struct MarkedRow {
    const JournalEntry &entry;
    std::vector<JournalChange> changes;
    std::vector<LateDate> late;
    bool isPushedAhead;
};

void forEachRow(const Project &project, const std::function<void(const MarkedRow &)> &each)
{
    const std::vector<JournalEntry> rows = project.journal();
    const std::string zone = project.records()->project.time_zone;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        auto changes = project.changesOf(rows[i].seq);
        auto late = lateDates(rows[i], changes, zone, project.profile().late_entry_days);
        each({rows[i], std::move(changes), std::move(late),
              i > 0 && isPushedAhead(rows[i], rows[i - 1])});
    }
}

void writeLate(JsonWriter &json, const std::vector<LateDate> &dates)
{
    json.key("late");
    json.beginArray();
    for (const LateDate &date : dates) {
        json.beginObject();
        json.member("record", word(date.record.type));
        json.member("id", date.record.id);
        json.member("field", date.field);
        json.member("day", date.day.text());
        json.endObject();
    }
    json.endArray();
}

void writeEntry(JsonWriter &json, const MarkedRow &row)
{
    const JournalEntry &entry = row.entry;
    json.beginObject();
    json.member("seq", entry.seq);
    json.member("change_id", entry.change_id);
    json.member("stamp", entry.stamp);
    json.member("kind", word(entry.kind));
    json.key("who");
    entry.who.empty() ? json.null() : json.value(entry.who);
    json.member("label", entry.label);
    json.member("hash", entry.hash);
    json.member("previous_hash", entry.previous_hash);
    json.key("changes");
    json.beginArray();
    for (const JournalChange &change : row.changes)
        writeChange(json, change);
    json.endArray();
    writeLate(json, row.late);
    json.member("clock_set_back", row.isPushedAhead);
    json.endObject();
}

void writeJson(const Project &project, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginArray();
    forEachRow(project, [&](const MarkedRow &row) { writeEntry(json, row); });
    json.endArray();
}

std::string valueText(const std::optional<std::string> &value)
{
    constexpr std::size_t longest = 60;
    return value ? shortened(onOneLine(*value), longest) : "nothing";
}

void printField(std::ostream &out, const JournalChange &change, const FieldChange &field)
{
    for (const std::string &item : field.removed)
        fmt::print(out, "      {} without {}\n", field.name, valueText(item));
    for (const std::string &item : field.added)
        fmt::print(out, "      {} with {}\n", field.name, valueText(item));
    if (!field.added.empty() || !field.removed.empty())
        return;
    if (change.kind == RowChange::Insert)
        fmt::print(out, "      {}: {}\n", field.name, valueText(field.to));
    else
        fmt::print(out, "      {}: {} became {}\n", field.name, valueText(field.from),
                   valueText(field.to));
}

void printMarks(std::ostream &out, const Records &records, const MarkedRow &row)
{
    if (row.isPushedAhead)
        fmt::print(out, "   the clock had been set back: the time is that of the row before\n");
    for (const LateDate &date : row.late) {
        fmt::print(out, "   LATE: {} of {} is {}\n", date.field,
                   onOneLine(designation(records, date.record)), date.day.text());
    }
}

void printEntry(std::ostream &out, const Project &project, const MarkedRow &row)
{
    const JournalEntry &entry = row.entry;
    const auto stamp =
        std::chrono::sys_time<std::chrono::milliseconds>(std::chrono::milliseconds(entry.stamp));
    const Records &records = *project.records();
    fmt::print(out, "{}  {}  {}{}{}\n", entry.seq,
               localMoment(stamp, records.project.time_zone).text(),
               entry.who.empty() ? "" : onOneLine(entry.who) + ": ",
               entry.kind == ChangeKind::Change ? "" : "(" + std::string(word(entry.kind)) + ") ",
               onOneLine(entry.label));
    printMarks(out, records, row);
    for (const JournalChange &change : row.changes) {
        constexpr std::string_view did[] = {"made", "changed", "removed"};
        fmt::print(out, "   {} {}\n", onOneLine(designation(records, change.record)),
                   did[std::size_t(change.kind)]);
        for (const FieldChange &field : change.fields)
            printField(out, change, field);
    }
    fmt::print(out, "   hash {}\n", entry.hash);
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    if (options.json) {
        writeJson(*project, terminal.out());
        terminal.out() << '\n';
        return Outcome::Done;
    }
    forEachRow(*project, [&](const MarkedRow &row) { printEntry(terminal.out(), *project, row); });
    return Outcome::Done;
}

} // namespace

void declareJournal(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        addVerb(program, "journal", "Tells what was changed, when and by whom", *options);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
