// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <vector>

namespace lastrivet::ui {

class ActLine;
class Session;

/// Asks why records are withdrawn, names what would go with them because it names them, and what
/// would stay without the photographs among them, and does all of it.
void askToWithdraw(Session &session, ActLine &ask, const std::vector<RecordRef> &records);
void askToWithdraw(Session &session, ActLine &ask, RecordRef record);

} // namespace lastrivet::ui
