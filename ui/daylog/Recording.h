// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryReading.h"

#include <optional>

namespace lastrivet::ui {

class Session;

/// Puts on record what a line was understood to say, with the steps it ticks. The last entry, or
/// none when it was refused, which is said.
std::optional<Id<WorkSession>> recordEntry(Session &session, const entry::EntryReading &reading);

} // namespace lastrivet::ui
