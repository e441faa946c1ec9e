// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::entry {

/// The kind of work that a folded word names: "rework", "painting".
std::optional<WorkKind> kindNamed(const std::string &word);

/// The kind of work that the folded words of a note speak of; the first word that tells it counts.
std::optional<WorkKind> kindGuessed(const std::vector<std::string> &note);

} // namespace lastrivet::entry
