// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/CopyReport.h"
#include "app/cli/OpenProject.h"
#include "app/cli/VerbOptions.h"
#include "core/base/Clock.h"

#include <CLI/CLI.hpp>

namespace lastrivet::cli {

namespace {

struct Options {
    std::string backup;
    std::string to;
    bool json = false;
};

Outcome restore(const Options &options, Terminal &terminal)
{
    const auto report = tellingWhere(options.backup, [&] {
        return *backup::restore(options.backup, options.to, SystemClock{}.now());
    });
    tell(report, options.json, terminal);
    return report.isWhole() ? Outcome::Done : Outcome::No;
}

} // namespace

void declareRestore(CLI::App &program, Action &chosen)
{
    auto options = std::make_shared<Options>();
    CLI::App &verb =
        *program.add_subcommand("restore", "Makes a project again of a backup, in a new folder");
    verb.add_option("BACKUP", options->backup, "The backup's folder, or a database in its backups")
        ->required();
    verb.add_option("--to", options->to, "The folder to make")->required()->type_name("PROJECT");
    addJsonFlag(verb, options->json);
    whenNamed(verb, chosen, [options](Terminal &terminal) { return restore(*options, terminal); });
}

} // namespace lastrivet::cli
