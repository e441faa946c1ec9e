// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/storage/Database.h"

#include <optional>
#include <set>
#include <string>

namespace lastrivet::storage {

/// The schema of a database as a set of lines: tables, columns with their positions, types,
/// defaults and keys, references, indexes, triggers and checks. Databases with the same lines are
/// alike to every program.
using Shape = std::set<std::string>;

Shape shapeOf(const Database &database);

/// The first line that only one of them has, and which one that is; empty when they are the same.
std::optional<Message> differenceBetween(const Shape &has, const Shape &should);

} // namespace lastrivet::storage
