// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

namespace lastrivet::ui {

class ActLine;
class Session;

/// Asks why a record is withdrawn, names what would go with it because it names it, and does both.
void askToWithdraw(Session &session, ActLine &ask, RecordRef record);

} // namespace lastrivet::ui
