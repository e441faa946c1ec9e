// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"
#include "core/records/RecordType.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet {

/// What a merge could not settle by itself.
enum class ConflictKind {
    Value,     ///< both copies gave a field another value; the later one stands
    Existence, ///< one copy took the record back while the other went on with it; it stays
    SetAside,  ///< a change broke a rule once the other copy's changes were there; it was left out
};
template <> struct Words<ConflictKind> {
    static constexpr std::array<std::string_view, 3> list{"value", "existence", "set_aside"};
};

/// What a person decided about it: what stands stays, or what lost takes its place.
enum class ConflictDecision { Kept, Taken };
template <> struct Words<ConflictDecision> {
    static constexpr std::array<std::string_view, 2> list{"kept", "taken"};
};

/// Something for a person to decide after a merge.
struct MergeConflict {
    /// One of the two changes that met.
    struct Change {
        /// Empty when it is not known.
        std::string change_id;
        std::string who;
        std::string label;
        /// Milliseconds since 1970 in UTC; 0 when it is not known.
        std::int64_t stamp = 0;
    };

    std::int64_t id = 0;
    ConflictKind kind = ConflictKind::Value;
    RecordRef record{RecordType::Project, 1};
    /// Empty when it is about the whole record; of a list, `list.field`.
    std::string field;
    /// The position in a list, or the person among workers.
    std::optional<std::int64_t> item;
    /// JSON texts; nothing for null.
    std::optional<std::string> kept;
    std::optional<std::string> lost;
    Change kept_by;
    Change lost_by;
    /// Why a change was left out, in English.
    std::string reason;
    std::optional<ConflictDecision> decision;
    /// Whether what lost can be taken at a word; else the record is changed by hand.
    bool canBeTaken = false;
};

/// What a merge brought.
struct MergeReport {
    /// Changes of the other copy that were new here.
    std::size_t changes = 0;
    /// Records that are not as they were here.
    std::size_t records = 0;
    /// Files that were copied, and those that neither copy has any more.
    std::size_t files = 0;
    std::vector<std::string> missing_files;
    /// What is to decide, newly or still.
    std::vector<std::int64_t> conflicts;
};

} // namespace lastrivet
