// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/VerbOptions.h"

#include "core/base/Utf8.h"

#include <CLI/CLI.hpp>

#include <string>

namespace lastrivet::cli {

CLI::App &addVerb(CLI::App &program, const char *name, const char *promise, VerbOptions &options)
{
    CLI::App *verb = program.add_subcommand(name, promise);
    verb->add_option("PROJECT", options.project, "The project's folder")->required()->type_name("");
    return *verb;
}

void addJsonFlag(CLI::App &verb, bool &json)
{
    verb.add_flag("--json", json, "Answer in JSON");
}

CLI::Option &asText(CLI::Option &option)
{
    option.check([](const std::string &text) {
        return std::string(firstNotUtf8(text) ? "is no text in UTF-8" : "");
    });
    return option;
}

void addWho(CLI::App &verb, std::string &who)
{
    asText(
        *verb.add_option("--who", who, "Whose change this is; the project's builder when not said"))
        .type_name("NAME");
}

void whenNamed(CLI::App &verb, Action &chosen, Action action)
{
    verb.callback([&chosen, action = std::move(action)] { chosen = action; });
}

} // namespace lastrivet::cli
