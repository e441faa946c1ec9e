// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/JournalEntry.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lastrivet::storage {

/// A changeset as people read it: record by record, field by field.
std::vector<JournalChange> journalChanges(std::span<const std::uint8_t> changeset);

} // namespace lastrivet::storage
