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

/// What a merge could not settle by itself, and what it did for the time being.
enum class ConflictKind {
    Value,     ///< each copy gave the field a value of its own; the later one stands
    Existence, ///< one copy took the record back while the other went on with it; it stays
    SetAside,  ///< beside the other copy's changes, this one broke a rule; it was left out
};
template <> struct Words<ConflictKind> {
    static constexpr std::array<std::string_view, 3> list{"value", "existence", "set_aside"};
};

/// What a person decided: what stands is kept, or what lost takes its place.
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
    /// The field's name, within a list `list.field`; empty when it is about the whole record.
    std::string field;
    /// The position in a list, or the person among workers.
    std::optional<std::int64_t> item;
    /// The two values as JSON texts; empty for null.
    std::optional<std::string> kept;
    std::optional<std::string> lost;
    Change kept_by;
    Change lost_by;
    /// Why a change was left out, in English.
    std::string reason;
    /// Empty until somebody decides.
    std::optional<ConflictDecision> decision;
    /// Whether `decide` can put what lost in place; otherwise the record has to be edited by hand.
    bool canBeTaken = false;
};

/// What a merge brought in.
struct MergeReport {
    /// Changes of the other copy that were new here.
    std::size_t changes = 0;
    /// Records that differ from before.
    std::size_t records = 0;
    /// Files that were copied.
    std::size_t files = 0;
    /// Names of the files that records speak of and neither copy has any more.
    std::vector<std::string> missing_files;
    /// Ids of all undecided conflicts, old ones included.
    std::vector<std::int64_t> conflicts;
};

} // namespace lastrivet
