// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

namespace lastrivet::acts {

/// Enters a stretch of work into the log: a missing part is that of its step, else of its squawk;
/// without workers it was the project's builder, when one is known. A part may stay missing.
Id<WorkSession> enterSession(Edit &edit, WorkSession session);

} // namespace lastrivet::acts
