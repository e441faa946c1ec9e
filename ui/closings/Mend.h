// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"

#include <QString>

namespace lastrivet::ui {

/// What can be done about a blocker from its ledger.
enum class Mend { None, Sign, AskForVisit, AddSheet, AddPhoto, Tick, StepDone };

Mend mendFor(const readiness::Blocker &blocker);
/// The words of its button; empty for none.
QString mendWords(Mend mend);

} // namespace lastrivet::ui
