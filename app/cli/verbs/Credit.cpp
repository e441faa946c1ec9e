// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/credit/Credit.h"
#include "app/cli/OpenProject.h"
#include "app/cli/PlainText.h"
#include "app/cli/VerbOptions.h"
#include "core/answers/CreditJson.h"

#include <CLI/CLI.hpp>

#include <fmt/ostream.h>

namespace lastrivet::cli {

namespace {

struct Options : VerbOptions {
    bool json = false;
};

/// Tenths of a task as tasks: "3.4".
std::string tasks(std::int64_t tenths)
{
    return fmt::format("{}.{}", tenths / 10, tenths % 10);
}

std::string halves(std::int64_t halfTicks)
{
    return fmt::format("{}{}", halfTicks / 2, halfTicks % 2 == 0 ? "" : " ½");
}

void printVerdict(const credit::Account &account, std::ostream &out)
{
    if (account.two_columns) {
        fmt::print(out, "By ticks: builder {}, maker {}.\n",
                   halves(account.two_columns->builder_half_ticks),
                   halves(account.two_columns->maker_half_ticks));
    }
    fmt::print(out,
               "By these figures this {} the major portion by the rules of profile {}; the "
               "authority decides.\n",
               account.passes() ? "is" : "is not", account.profile);
}

void printText(const credit::Account &account, const Records &records, std::ostream &out)
{
    fmt::print(out, "{}, {} of them applicable.\n", counted(account.rows, "task"),
               account.applicable_rows);
    const auto share = account.shareText();
    if (!share) {
        out << "No row applies yet, so nothing can be said of the major portion.\n";
        return;
    }
    fmt::print(out,
               "In tasks: kit {}, commercial help {}, builder's assembly {}, builder's fabrication "
               "{}.\n",
               tasks(account.kit_tenths), tasks(account.commercial_tenths),
               tasks(account.assembly_tenths), tasks(account.fabrication_tenths));
    fmt::print(out, "The builder's share is {} %.\n", *share);
    printVerdict(account, out);
    if (!account.evidence_gaps.empty())
        out << "No picture shows the builder's work on:\n";
    for (const Id<CreditTask> id : account.evidence_gaps) {
        const CreditTask &task = *records.find(id);
        fmt::print(out, "  {}{}{}\n", onOneLine(task.section), task.section.empty() ? "" : ": ",
                   onOneLine(task.task));
    }
}

Outcome tell(const Options &options, Terminal &terminal)
{
    const auto project = openForReading(options.project, terminal);
    const Records &records = *project->records();
    const credit::Account account = credit::account(records, project->profile());
    if (options.json)
        answers::writeJson(account, terminal.out());
    else
        printText(account, records, terminal.out());
    return Outcome::Done;
}

} // namespace

void declareCredit(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb = addVerb(program, "credit", "Adds up who did how much of the tasks", *options);
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return tell(*options, terminal); });
}

} // namespace lastrivet::cli
