// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/Complaint.h"
#include "app/cli/Verbs.h"
#include "core/base/Error.h"
#include "core/base/Trimmed.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <spdlog/spdlog.h>

#include <iostream>
#include <new>
#include <string>
#include <system_error>

namespace lastrivet::cli {

namespace {

void declareVerbs(CLI::App &program, Action &chosen)
{
    declareNew(program, chosen);
    declareImport(program, chosen);
    declareExport(program, chosen);
    declareReady(program, chosen);
    declareRestore(program, chosen);
    declareSquawks(program, chosen);
    declareForecast(program, chosen);
    declareHours(program, chosen);
    declareBackup(program, chosen);
    declareConflicts(program, chosen);
    declareCredit(program, chosen);
    declareLog(program, chosen);
    declareLogbook(program, chosen);
    declareMerge(program, chosen);
    declarePhotos(program, chosen);
    declarePacket(program, chosen);
    declareVerify(program, chosen);
    declareWorkshop(program, chosen);
    declareUndo(program, chosen);
    declareRedo(program, chosen);
    declareJournal(program, chosen);
}

/// What is wrong with the value of an option; empty when nothing is.
std::string faultOf(const std::string &value, const CLI::App &verb)
{
    if (trimmed(value).empty())
        return "the value is empty";
    if (value.starts_with("--") && verb.get_option_no_throw(value))
        return "the value is missing; " + value + " is an option";
    return {};
}

/// Refuses options with an empty value, or with the next option in its place, as where a variable
/// of a script is not set. Taken for an option that is not given, it would take another change back
/// than the one meant, or move the times of all photographs.
void requireValues(CLI::App &app)
{
    for (CLI::Option *option : app.get_options()) {
        const bool takesValue = option->get_items_expected_max() > 0;
        if (takesValue && option->nonpositional())
            option->check([&app](const std::string &value) { return faultOf(value, app); });
    }
    for (CLI::App *inner : app.get_subcommands([](CLI::App *) { return true; }))
        requireValues(*inner);
}

/// Runs the verb; the one place where exceptions become a line on the error stream and an exit
/// code.
Outcome carryOut(const Action &action, Terminal &terminal)
{
    try {
        return action(terminal);
    } catch (const WrongUsage &usage) {
        terminal.complain(usage.what());
        return Outcome::WrongUsage;
    } catch (const Invalid &invalid) {
        for (const std::string &line : invalid.lines())
            terminal.complain(line);
    } catch (const std::bad_alloc &) {
        terminal.complain("There is not enough memory for this.");
    } catch (const std::exception &fault) {
        terminal.complain(fault.what());
    }
    return Outcome::Failed;
}

/// Prints what the parser complains of, or the help, which CLI11 throws as an error, too.
Outcome complainOfUsage(const CLI::App &program, const CLI::ParseError &error, Terminal &terminal)
{
    if (error.get_exit_code() == int(CLI::ExitCodes::Success)) {
        program.exit(error, terminal.out(), terminal.out());
        return Outcome::Done;
    }
    const auto named = program.get_subcommands();
    const auto rest = program.remaining();
    if (!named.empty())
        terminal.complain(fmt::format("{}; see lastrivet-cli {} --help", error.what(),
                                      named.front()->get_name()));
    else if (rest.empty())
        terminal.complain("A verb is missing; see lastrivet-cli --help");
    else
        terminal.complain(
            fmt::format("There is no verb “{}”; see lastrivet-cli --help", rest.front()));
    return Outcome::WrongUsage;
}

Outcome run(int count, char **arguments, Terminal &terminal)
{
    CLI::App program("The building records of a home-built aeroplane, from a terminal",
                     "lastrivet-cli");
    program.set_version_flag("--version", LASTRIVET_VERSION);
    program.require_subcommand(1);
    Action chosen;
    declareVerbs(program, chosen);
    requireValues(program);
    try {
        program.parse(count, arguments);
    } catch (const CLI::ParseError &error) {
        return complainOfUsage(program, error, terminal);
    }
    return carryOut(chosen, terminal);
}

} // namespace

} // namespace lastrivet::cli

int main(int count, char **arguments)
{
    using namespace lastrivet::cli;
    // Verbs say themselves what a person must know; log lines would only mix with their answers.
    spdlog::set_level(spdlog::level::off);
    std::ios::sync_with_stdio(false);
    Terminal terminal(std::cout, std::cerr);
    const Outcome outcome = run(count, arguments, terminal);
    if (!std::cout.flush()) {
        // Whoever takes it for undone and asks again has it twice.
        terminal.complain(outcome == Outcome::Done || outcome == Outcome::No
                              ? "The answer could not be written. A change that was asked for is "
                                "made all the same."
                              : "The answer could not be written.");
        return int(Outcome::Failed);
    }
    return int(outcome);
}
