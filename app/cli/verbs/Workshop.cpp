// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/Names.h"
#include "app/cli/VerbOptions.h"
#include "app/cli/WorkshopReport.h"
#include "core/balance/BalanceFile.h"
#include "core/base/Error.h"
#include "core/base/JsonWriter.h"
#include "core/exchange/InputText.h"
#include "core/workshop/Inches.h"
#include "core/workshop/Sheet.h"
#include "core/workshop/Wrench.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options {
    std::string thread;
    std::string nut;
    double drag = 0;
    double desired = 0;
    double setting = 0;
    double lever = 0;
    double extension = 0;
    std::string diameter;
    std::string grip;
    std::string gauge;
    double run = 0;
    double amps = 0;
    std::string rating = "105";
    double celsius = 20;
    double angle = 90;
    std::string radius;
    std::string sheet;
    std::string table;
    std::string file;
    bool json = false;
};

template <class Value> const Value &usable(const Result<Value, Message> &result)
{
    if (!result)
        throw WrongUsage(english(result.reason()));
    return *result;
}

double inchesOf(const std::string &text, std::string_view option)
{
    const auto length = workshop::inches(text);
    if (!length)
        throw WrongUsage(
            fmt::format("{}: “{}” is no length in inches, such as 1/8 or 0.19.", option, text));
    return *length;
}

/// Ends the line after JSON.
Outcome endLine(Terminal &terminal)
{
    terminal.out() << '\n';
    return Outcome::Done;
}

void writeWrenchJson(std::string_view key, double torque, std::ostream &out)
{
    JsonWriter json(out, JsonWriter::Layout::Indented);
    json.beginObject();
    json.member(key, torque);
    json.member("unit_free", true);
    json.member("source", workshop::wrenchSource);
    json.endObject();
}

Outcome torque(const Options &options, Terminal &terminal)
{
    const auto answer =
        workshop::torque(options.thread, wordOf<workshop::Nut>(options.nut, "--nut"), options.drag);
    if (!options.json) {
        print(usable(answer), terminal.out());
        return Outcome::Done;
    }
    writeJson(usable(answer), terminal.out());
    return endLine(terminal);
}

Outcome wrench(const Options &options, bool isInverse, Terminal &terminal)
{
    const auto answer =
        isInverse ? workshop::appliedTorque(options.setting, options.lever, options.extension)
                  : workshop::wrenchSetting(options.desired, options.lever, options.extension);
    if (!options.json) {
        fmt::print(terminal.out(), "{} {:.2f}, in the units that were given\nSource: {}\n{}",
                   isInverse ? "At the nut:" : "Set the wrench to", usable(answer),
                   workshop::wrenchSource, workshopCaution);
        return Outcome::Done;
    }
    writeWrenchJson(isInverse ? "applied" : "setting", usable(answer), terminal.out());
    return endLine(terminal);
}

Outcome rivet(const Options &options, Terminal &terminal)
{
    const auto answer =
        workshop::rivet(inchesOf(options.diameter, "--diameter"), inchesOf(options.grip, "--grip"));
    if (!options.json) {
        print(usable(answer), terminal.out());
        return Outcome::Done;
    }
    writeJson(usable(answer), terminal.out());
    return endLine(terminal);
}

Outcome edge(const Options &options, Terminal &terminal)
{
    const auto diameter = inchesOf(options.diameter, "--diameter");
    if (diameter <= 0)
        throw WrongUsage("--diameter: a rivet is thicker than nothing.");
    if (!options.json) {
        printEdge(diameter, terminal.out());
        return Outcome::Done;
    }
    writeEdgeJson(diameter, terminal.out());
    return endLine(terminal);
}

Outcome wire(const Options &options, Terminal &terminal)
{
    const auto rating = wordOf<workshop::Rating>(options.rating, "--rating");
    const auto answer =
        workshop::wireRun(options.gauge, options.run, options.amps, rating, options.celsius);
    if (!options.json) {
        print(usable(answer), terminal.out());
        return Outcome::Done;
    }
    writeJson(usable(answer), terminal.out());
    return endLine(terminal);
}

Outcome bend(const Options &options, Terminal &terminal)
{
    const double setback = usable(workshop::setback(
        options.angle, inchesOf(options.radius, "--radius"), inchesOf(options.sheet, "--sheet")));
    if (!options.json) {
        fmt::print(terminal.out(), "Setback {:.4f} in\nSource: {}\n{}", setback,
                   workshop::setbackSource, workshopCaution);
        return Outcome::Done;
    }
    {
        JsonWriter json(terminal.out(), JsonWriter::Layout::Indented);
        json.beginObject();
        json.member("setback", setback);
        json.member("source", workshop::setbackSource);
        json.endObject();
    }
    return endLine(terminal);
}

Outcome table(const Options &options, Terminal &terminal)
{
    const auto names = workshop::WorkshopTable::names();
    if (std::find(names.begin(), names.end(), options.table) == names.end())
        throw WrongUsage(fmt::format("There is no table “{}”; there are {}.", options.table,
                                     fmt::join(names, ", ")));
    const auto &found = workshop::WorkshopTable::named(options.table);
    if (!options.json) {
        print(found, terminal.out());
        return Outcome::Done;
    }
    writeJson(found, terminal.out());
    return endLine(terminal);
}

Outcome balance(const Options &options, Terminal &terminal)
{
    const auto question = balance::readQuestion(exchange::readInputFile(options.file));
    const auto sum = question ? balance::balance(question->items, question->chord)
                              : Result<balance::Balance, Message>(question.reason());
    if (!sum)
        throw UnreadableInput(fmt::format("{}: {}", options.file, english(sum.reason())));
    if (!options.json) {
        print(*sum, question->weight_unit, question->arm_unit, terminal.out());
        return Outcome::Done;
    }
    writeJson(*sum, terminal.out());
    return endLine(terminal);
}

void declareTorque(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("torque", "Torque of a bolt by thread and nut");
    verb.add_option("--thread", options->thread, "As 1/4-28 or 10-32")->required();
    verb.add_option("--nut", options->nut, "tension or shear")->required();
    verb.add_option("--drag", options->drag, "In-lb, read off the wrench while the nut runs down");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return torque(*options, terminal); });
}

void declareWrench(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("wrench", "Torque wrench with an extension");
    auto *desired = verb.add_option("--desired", options->desired, "The torque wanted at the nut");
    auto *setting = verb.add_option("--setting", options->setting,
                                    "What the wrench is set to: asks what reaches the nut");
    desired->excludes(setting);
    verb.add_option("--lever", options->lever, "From the middle of the grip to the drive")
        ->required();
    verb.add_option("--extension", options->extension,
                    "From the drive to the nut; below zero when it points back to the handle")
        ->required();
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options, desired, setting](Terminal &terminal) {
        if (desired->count() + setting->count() != 1)
            throw WrongUsage("One of --desired and --setting is needed.");
        return wrench(*options, setting->count() > 0, terminal);
    });
}

void declareRivet(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("rivet", "Length, drill and heads of a solid rivet");
    verb.add_option("--diameter", options->diameter, "In inches, as 1/8")->required();
    verb.add_option("--grip", options->grip, "Thickness of all sheets, in inches")->required();
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return rivet(*options, terminal); });
}

void declareEdge(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("edge", "Edge distances and pitches of rivets");
    verb.add_option("--diameter", options->diameter, "In inches, as 1/8")->required();
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return edge(*options, terminal); });
}

void declareWire(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("wire", "Voltage drop of a copper wire");
    verb.add_option("--gauge", options->gauge, "AWG, as 12 or 00")->required();
    verb.add_option("--run", options->run, "Length in feet, one way")->required();
    verb.add_option("--amps", options->amps, "Current")->required();
    verb.add_option("--rating", options->rating, "Insulation in °C: 105, 150 or 200");
    verb.add_option("--celsius", options->celsius, "Temperature of the conductor, 20 if not given");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return wire(*options, terminal); });
}

void declareBend(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("bend", "Setback of a bend in sheet metal");
    verb.add_option("--angle", options->angle, "What the sheet is bent by, in degrees")->required();
    verb.add_option("--radius", options->radius, "Inner radius in inches")->required();
    verb.add_option("--sheet", options->sheet, "Thickness in inches")->required();
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return bend(*options, terminal); });
}

void declareTable(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("table", "A published table, row by row");
    verb.add_option("NAME", options->table, "As torque_fine")->required()->type_name("");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return table(*options, terminal); });
}

void declareBalance(CLI::App &workshop, const std::shared_ptr<Options> &options, Action &chosen)
{
    CLI::App &verb = *workshop.add_subcommand("balance", "Weight, moment and centre of gravity");
    verb.add_option("FILE", options->file, "Items as JSON")->required()->type_name("");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return balance(*options, terminal); });
}

} // namespace

void declareWorkshop(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &workshop = *program.add_subcommand(
        "workshop", "Workshop tables and sums, each number with its source");
    workshop.require_subcommand(1);
    declareTorque(workshop, options, chosen);
    declareWrench(workshop, options, chosen);
    declareRivet(workshop, options, chosen);
    declareEdge(workshop, options, chosen);
    declareWire(workshop, options, chosen);
    declareBend(workshop, options, chosen);
    declareTable(workshop, options, chosen);
    declareBalance(workshop, options, chosen);
}

} // namespace lastrivet::cli
