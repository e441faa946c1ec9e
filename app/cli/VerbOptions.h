// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Verbs.h"

#include <memory>
#include <string>
#include <string_view>

namespace CLI {
class Option;
} // namespace CLI

namespace lastrivet::cli {

/// What every verb takes: the project's folder.
struct VerbOptions {
    std::string project;
};

// Options that several verbs share. CLI11 is slow to compile and is included in .cpp files only.

/// A verb and its project folder.
CLI::App &addVerb(CLI::App &program, const char *name, const char *promise, VerbOptions &options);
void addJsonFlag(CLI::App &verb, bool &json);
/// An option that goes into the records, which are in UTF-8; a file's name need not be.
CLI::Option &asText(CLI::Option &option);
/// Whose change it is.
void addWho(CLI::App &verb, std::string &who);
/// Sets `chosen` when the verb is named.
void whenNamed(CLI::App &verb, Action &chosen, Action action);

} // namespace lastrivet::cli
