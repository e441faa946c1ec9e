// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/WorkSession.h"

#include <vector>

namespace lastrivet::ui {

class ActLine;
class Session;

/// Asks into which parts or times an entry is split, and does it.
void askToSplit(Session &session, ActLine &ask, Id<WorkSession> entry);
/// Asks to which day or part entries are moved, and does it.
void askToMove(Session &session, ActLine &ask, const std::vector<Id<WorkSession>> &entries);

} // namespace lastrivet::ui
