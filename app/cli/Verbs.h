// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Outcome.h"
#include "app/cli/Terminal.h"

#include <functional>

namespace CLI {
class App;
}

namespace lastrivet::cli {

/// What the command line asks for.
using Action = std::function<Outcome(Terminal &)>;

// One function per verb, in the file of its name. Each declares the verb and its options, and sets
// `chosen` to what the verb does when the command line names it.

void declareBackup(CLI::App &program, Action &chosen);
void declareConflicts(CLI::App &program, Action &chosen);
void declareCredit(CLI::App &program, Action &chosen);
void declareExport(CLI::App &program, Action &chosen);
void declareForecast(CLI::App &program, Action &chosen);
void declareHours(CLI::App &program, Action &chosen);
void declareImport(CLI::App &program, Action &chosen);
void declareJournal(CLI::App &program, Action &chosen);
void declareLog(CLI::App &program, Action &chosen);
void declareLogbook(CLI::App &program, Action &chosen);
void declareMerge(CLI::App &program, Action &chosen);
void declareNew(CLI::App &program, Action &chosen);
void declarePacket(CLI::App &program, Action &chosen);
void declarePhotos(CLI::App &program, Action &chosen);
void declareReady(CLI::App &program, Action &chosen);
void declareRedo(CLI::App &program, Action &chosen);
void declareRestore(CLI::App &program, Action &chosen);
void declareSquawks(CLI::App &program, Action &chosen);
void declareUndo(CLI::App &program, Action &chosen);
void declareVerify(CLI::App &program, Action &chosen);
void declareWorkshop(CLI::App &program, Action &chosen);

} // namespace lastrivet::cli
