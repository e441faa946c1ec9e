// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/Import.h"
#include "app/cli/Complaint.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/base/JsonWriter.h"
#include "core/exchange/DocumentFormat.h"
#include "core/exchange/InputText.h"
#include "core/exchange/csv/CsvDays.h"
#include "core/exchange/csv/CsvHours.h"
#include "core/exchange/csv/CsvImport.h"
#include "core/exchange/csv/CsvPrices.h"
#include "core/exchange/csv/ListText.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <filesystem>
#include <fmt/ostream.h>
#include <fmt/ranges.h>
#include <iterator>
#include <optional>
#include <string_view>

namespace lastrivet::cli {

namespace {

namespace fs = std::filesystem;
using exchange::ImportReport;
using exchange::InputErrors;

struct Options : VerbOptions {
    std::vector<std::string> files;
    std::string as;
    std::string days;
    bool mayCreate = false;
    std::string who;
    bool json = false;

    Project::Options opening() const { return {nullptr, who, false}; }
};

struct Imported {
    std::string file;
    ImportReport report;
};

using Hints = std::vector<std::optional<std::string>>;

[[noreturn]] void refuse(const InputErrors &errors, const std::string &file,
                         const Hints &hints = {})
{
    std::vector<std::string> lines;
    for (const auto &error : errors)
        lines.push_back(exchange::english(error, file));
    for (const auto &hint : hints) {
        if (hint)
            lines.push_back(fmt::format("{}: {}.", file, *hint));
    }
    throw Invalid(std::move(lines));
}

/// Refuses a file that is not such a list, which would otherwise count as one without rows.
void requireSomeField(const std::string &file, const exchange::CsvColumns &columns, RecordType type)
{
    if (std::ranges::any_of(columns, [](const std::string &field) { return !field.empty(); }))
        return;
    throw Invalid(std::vector<std::string>{
        fmt::format("{}: The first row names no field of {}; these have {}.", file, plural(type),
                    fmt::join(exchange::csvFields(type), ", "))});
}

/// Says what a column "time" was taken for: it may mean when, or how long.
void warnOfTime(const std::string &file, exchange::TimeColumn time, Terminal &terminal)
{
    if (time == exchange::TimeColumn::IsLength)
        terminal.complain(fmt::format(
            "{}: took the column \"time\" for how long the work took, bare numbers as minutes.",
            file));
    if (time == exchange::TimeColumn::IsClock)
        terminal.complain(fmt::format("{}: left out the column \"time\": it holds times of the "
                                      "day; head it \"duration\" if it says how long.",
                                      file));
}

bool isAnyIn(const exchange::CsvTable &table, std::size_t column)
{
    return std::ranges::any_of(table.rows,
                               [column](const auto &row) { return !row[column].empty(); });
}

void warnOfColumns(const std::string &file, const exchange::CsvTable &table,
                   const exchange::CsvColumns &columns, RecordType type, Terminal &terminal)
{
    const auto doubled = exchange::doubledColumns(table, type);
    const auto time = exchange::timeColumn(table, columns, type);
    warnOfTime(file, time, terminal);
    std::vector<std::string> unknown;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const bool isTold = time == exchange::TimeColumn::IsClock &&
                            exchange::plainHeader(table.header[i]) == "time";
        const auto &header = table.header[i];
        if (!columns[i].empty() || isTold || std::ranges::find(doubled, header) != doubled.end())
            continue;
        if (!exchange::plainHeader(header).empty())
            unknown.push_back(header);
        else if (isAnyIn(table, i))
            unknown.push_back(fmt::format("column {}", i + 1));
    }
    if (!doubled.empty())
        terminal.complain(
            fmt::format("{}: left out the columns whose field another column fills: {}.", file,
                        fmt::join(doubled, ", ")));
    if (!unknown.empty())
        terminal.complain(fmt::format("{}: left out the columns that name no field: {}.", file,
                                      fmt::join(unknown, ", ")));
}

constexpr std::string_view dayOrders[] = {"ymd", "dmy", "mdy"};

/// The order that was asked for, else the one that the days show, which is reported.
exchange::DayOrder dayOrderOf(std::string_view word, const std::string &file,
                              std::optional<exchange::DayOrder> shown, Terminal &terminal)
{
    if (const auto found = std::ranges::find(dayOrders, word); found != std::end(dayOrders))
        return exchange::DayOrder(found - std::begin(dayOrders));
    const auto order = shown.value_or(exchange::DayOrder::YearMonthDay);
    if (order != exchange::DayOrder::YearMonthDay)
        terminal.complain(fmt::format(
            "{}: took its days for {}; say with --days if they are others.", file,
            order == exchange::DayOrder::DayMonthYear ? "day-month-year" : "month-day-year"));
    return order;
}

/// What would help a list of days that are not written as the program does.
std::optional<std::string> hintOfDays(const exchange::CsvTable &table, RecordType type,
                                      const exchange::CsvColumns &columns, Moment today)
{
    auto other = table;
    exchange::rewriteDays(other, type, columns, exchange::DayOrder::DayMonthYear, today);
    if (other.rows == table.rows)
        return std::nullopt;
    return "some days are not written year-month-day; say with --days dmy or --days mdy how";
}

/// What would help a list of prices below the header of an export.
std::optional<std::string> hintOfPrices(const exchange::CsvTable &table,
                                        const exchange::CsvColumns &columns)
{
    const auto price = std::find(columns.begin(), columns.end(), "unit_price");
    if (price == columns.end())
        return std::nullopt;
    const auto place = std::size_t(price - columns.begin());
    const bool isBroken = std::ranges::any_of(table.rows, [place](const auto &row) {
        return row[place].find_first_of(".,") != std::string::npos;
    });
    if (!isBroken || table.header[place] != "unit_price")
        return std::nullopt;
    return "below \"unit_price\" stand whole minor units, as an export has them; head prices as "
           "people write them \"price\"";
}

std::vector<std::string> listNames()
{
    std::vector<std::string> names;
    for (const RecordType type : exchange::csvRecordTypes())
        names.emplace_back(plural(type));
    return names;
}

bool isThere(const std::string &folder)
{
    std::error_code none;
    return fs::exists(folder, none) && !fs::is_empty(folder, none);
}

/// The files into the project one after the other; each of them whole or not at all.
class ImportRun {
public:
    ImportRun(const Options &options, Terminal &terminal)
        : m_options(options)
    {
        if (!options.mayCreate || isThere(options.project))
            m_project = openForWriting(options.project, options.who, terminal);
        else if (!options.as.empty())
            throw WrongUsage("--create: a list alone makes no project; begin with \"new\".");
    }

    ImportReport take(const std::string &file, Terminal &terminal)
    {
        if (!m_options.as.empty())
            return takeList(file, terminal);
        if (fs::path(file).extension() == ".csv")
            throw WrongUsage(fmt::format("{}: say with --as what this list holds.", file));
        if (!m_project)
            return create(file);
        auto report = exchange::importDocument(*m_project, file);
        if (!report)
            refuse(report.reason(), file);
        return *report;
    }

private:
    ImportReport create(const std::string &file)
    {
        auto made = exchange::importAsNewProject(m_options.project, file,
                                                 ProfileLibrary::standard(), m_options.opening());
        if (!made)
            refuse(made.reason(), file);
        m_project.reset(made->project.release());
        return made->report;
    }

    ImportReport takeList(const std::string &file, Terminal &terminal)
    {
        const RecordType type = *exchange::recordTypeOfPlural(m_options.as);
        auto table = exchange::readCsv(exchange::listText(exchange::readInputFile(file)));
        if (!table)
            refuse(table.reason(), file);
        auto columns = exchange::columnsByHeader(*table, type);
        requireSomeField(file, columns, type);
        warnOfColumns(file, *table, columns, type, terminal);
        const auto order =
            dayOrderOf(m_options.days, file, exchange::orderShown(*table, type, columns), terminal);
        exchange::rewriteDays(*table, type, columns, order, m_project->today());
        exchange::rewriteHours(*table, columns);
        const auto told =
            exchange::rewritePrices(*table, columns, m_project->records()->project.currency);
        const auto plan = exchange::importCsv(*m_project, *table, type, columns,
                                              fs::path(file).filename().string());
        if (!plan)
            refuse(plan.reason(), file,
                   {hintOfDays(*table, type, columns, m_project->today()),
                    hintOfPrices(*table, columns)});
        if (told)
            terminal.complain(fmt::format("{}: {}", file, english(*told)));
        ImportReport report;
        report.added[std::size_t(type)] = plan->import.added.size();
        report.skipped = plan->import.skipped;
        report.unknown_currencies = exchange::unknownCurrencies(plan->import);
        report.far_ahead = exchange::farAhead(plan->import, m_project->today());
        return report;
    }

    const Options &m_options;
    OpenedProject m_project;
};

void writeReport(JsonWriter &json, const Imported &imported)
{
    const ImportReport &report = imported.report;
    json.beginObject();
    json.member("file", imported.file);
    json.key("added");
    json.beginObject();
    for (std::size_t i = 0; i < recordTypeCount; ++i) {
        if (report.added[i] > 0)
            json.member(plural(RecordType(i)), report.added[i]);
    }
    json.endObject();
    json.member("skipped", report.skipped);
    json.member("hold_points_made", report.hold_points_made);
    json.member("files_copied", report.files_copied);
    json.key("files_missing");
    json.beginArray();
    for (const std::string &name : report.files_missing)
        json.value(name);
    json.endArray();
    json.endObject();
}

void writeJson(const std::vector<Imported> &all, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.key("files");
    json.beginArray();
    for (const Imported &imported : all)
        writeReport(json, imported);
    json.endArray();
    json.endObject();
}

void printText(const Imported &imported, std::ostream &out)
{
    const ImportReport &report = imported.report;
    fmt::print(out, "{}: {} added, {} there already, {} made by the profile, {} copied.\n",
               onOneLine(imported.file), counted(std::int64_t(report.addedInAll()), "record"),
               report.skipped, counted(std::int64_t(report.hold_points_made), "hold point"),
               counted(std::int64_t(report.files_copied), "file"));
}

void warnOfMissing(const Imported &imported, Terminal &terminal)
{
    const auto &missing = imported.report.files_missing;
    if (missing.empty())
        return;
    terminal.complain(fmt::format(
        "{}: {} named in it not found, the first is {}; the records were "
        "taken in, \"verify\" lists them.",
        imported.file, counted(std::int64_t(missing.size()), "file", "files"), missing.front()));
}

void warnOfCurrencies(const Imported &imported, Terminal &terminal)
{
    const auto &unknown = imported.report.unknown_currencies;
    if (!unknown.empty())
        terminal.complain(fmt::format("{}: no currency in force by ISO 4217: {}; the amounts were "
                                      "taken in as they are.",
                                      imported.file, fmt::join(unknown, ", ")));
}

/// Warns of dates far ahead, most likely a wrong year: they would not count until then.
void warnOfDays(const Imported &imported, Terminal &terminal)
{
    const auto &ahead = imported.report.far_ahead;
    if (!ahead.empty())
        terminal.complain(fmt::format(
            "{}: {} of days more than a year ahead, the first is {}; "
            "they count from then on.",
            imported.file, counted(std::int64_t(ahead.size()), "record speaks", "records speak"),
            ahead.front()));
}

void tellJson(const std::vector<Imported> &all, Terminal &terminal)
{
    writeJson(all, terminal.out());
    terminal.out() << '\n';
}

Outcome take(const Options &options, Terminal &terminal)
{
    ImportRun run(options, terminal);
    std::vector<Imported> all;
    try {
        for (const std::string &file : options.files) {
            all.push_back({file, run.take(file, terminal)});
            warnOfMissing(all.back(), terminal);
            warnOfCurrencies(all.back(), terminal);
            warnOfDays(all.back(), terminal);
            if (!options.json)
                printText(all.back(), terminal.out());
        }
    } catch (...) {
        // Reported, since what was imported before this stays.
        if (options.json && !all.empty())
            tellJson(all, terminal);
        throw;
    }
    if (options.json)
        tellJson(all, terminal);
    return Outcome::Done;
}

} // namespace

void declareImport(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "import", "Takes records in from JSON or CSV", *options);
    verb.add_option("FILE", options->files, "The files, each taken in whole or not at all")
        ->required()
        ->type_name("");
    verb.add_option("--as", options->as, "What a CSV file lists")
        ->check(CLI::IsMember(listNames()))
        ->type_name("WHAT");
    verb.add_option("--days", options->days,
                    "How a CSV file writes its days, where they do not show it: ymd, dmy or mdy")
        ->check(CLI::IsMember(std::vector<std::string>(std::begin(dayOrders), std::end(dayOrders))))
        ->type_name("ORDER");
    verb.add_flag("--create", options->mayCreate, "Makes the project when there is none");
    addWho(verb, options->who);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return take(*options, terminal); });
}

} // namespace lastrivet::cli
