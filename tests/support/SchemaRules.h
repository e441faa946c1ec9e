// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/SchemaSteps.h"

#include <span>
#include <string>
#include <vector>

namespace lastrivet::test {

/// What in these steps would make changes that are recorded in a journal unreadable, a sentence
/// each. Changesets know a table's columns by their places, so a table that was made may only get
/// more columns, at its end, that may be null or have a default.
///
/// The words that are searched and what is kept for this computer alone are in no changeset.
std::vector<std::string> breaches(std::span<const storage::SchemaStep> steps);

} // namespace lastrivet::test
