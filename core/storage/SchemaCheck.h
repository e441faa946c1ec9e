// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/storage/Database.h"

namespace lastrivet::storage {

/// Throws `UnreadableInput` unless the tables of the records are as this program makes them at the
/// database's step. Further tables and views, which somebody may have made for lists of his own,
/// are left alone.
void requireOwnTables(const Database &database);

/// Throws `UnreadableInput` unless all triggers and indexes are this program's own, too: a planted
/// one would change or hide records while others are written.
void requireOwnTriggers(const Database &database);

} // namespace lastrivet::storage
