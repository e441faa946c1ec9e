// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/InputError.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <map>
#include <optional>
#include <set>
#include <string>

namespace lastrivet::exchange {

/// What an interchange document holds.
struct ImportDocument {
    Records records;
    /// True when the document lists every hold point, so that none are to be made.
    bool hold_points_given = false;
    std::optional<Profile> profile;
    /// That of the profile copy, whatever else is wrong with it.
    std::string profile_id;
    /// Where each record stands in its array.
    std::map<RecordRef, std::size_t> positions;

    /// The JSON pointer of a record; empty for one that is not in the document.
    std::string pointerTo(RecordRef record) const;
};

/// A document as far as it could be read, and everything that is wrong with its form.
struct DocumentReading {
    ImportDocument document;
    InputErrors errors;
    /// Records that an error is about already.
    std::set<RecordRef> faulty;
    /// False when reading had to stop before the end.
    bool isComplete = false;
};

/// Reads a document, which may come from a stranger. Errors are: unknown, repeated and missing
/// fields, values of the wrong type, numbers out of bounds, days that do not exist, repeated ids,
/// nesting of more than 16 levels, U+0000, and bytes that are not UTF-8.
///
/// Each field goes straight into its record, without a tree of the whole text. The invariants,
/// which concern several records, are not checked here.
DocumentReading readDocument(std::string_view json);

} // namespace lastrivet::exchange
