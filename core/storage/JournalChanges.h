// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/JournalEntry.h"
#include "core/records/Description.h"
#include "core/storage/Cell.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace lastrivet::storage {

/// A changeset as people read it: record by record, field by field.
std::vector<JournalChange> journalChanges(std::span<const std::uint8_t> changeset);
/// The same of the first `most` records, among them and before all others `first`, where the
/// changeset has it; of the others it counts the records.
SomeChanges someJournalChanges(std::span<const std::uint8_t> changeset, std::size_t most,
                               std::optional<RecordRef> first);

/// A cell as a JSON text; nothing for null. `field` may be null.
std::optional<std::string> valueText(const Field *field, const Cell &cell);

} // namespace lastrivet::storage
