// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/cli/Terminal.h"
#include "core/backup/Backup.h"

namespace lastrivet::cli {

/// What was copied, as text or JSON, and a complaint per file that is missing or altered.
void tell(const backup::Report &report, bool asJson, Terminal &terminal);

} // namespace lastrivet::cli
