// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

#include <optional>
#include <set>
#include <string>

namespace lastrivet::storage {

/// What tables a database has, and everything about them but their rows: columns with their places,
/// kinds, defaults and keys, references, indexes, triggers and checks; a line each. Two databases
/// with the same lines are alike to every program.
using Shape = std::set<std::string>;

Shape shapeOf(const Database &database);

/// The first line that only one has, with which it is; empty when they are the same.
std::optional<std::string> differenceBetween(const Shape &has, const Shape &should);

} // namespace lastrivet::storage
