// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <cstdint>
#include <filesystem>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet {

/// Something in a project that is not as it should be.
struct Finding {
    /// `database`, `invariant`, `journal`, `replay`, `search` or `file`.
    std::string what;
    /// The record type; empty when it is about no record.
    std::string record;
    /// 0 when it is about no record.
    std::int64_t id = 0;
    /// One sentence in English.
    std::string text;
    /// The same, to be put into another language.
    Message message = {};

    friend bool operator==(const Finding &, const Finding &) = default;
};

/// What was looked at, and what was found.
struct Verification {
    std::int64_t records = 0;
    std::int64_t journal_rows = 0;
    /// Files on disk that were hashed.
    std::int64_t files = 0;
    /// Those of them with no SHA-256 on record, which they could be compared with.
    std::int64_t files_without_sha256 = 0;
    std::vector<Finding> findings;
    /// How many more were found than are listed.
    std::int64_t untold = 0;
    /// What is no fault, but good to know.
    std::vector<Message> notes;

    std::int64_t foundInAll() const { return std::int64_t(findings.size()) + untold; }
    bool isFaultless() const { return findings.empty(); }
};

/// Looks over a project folder without changing it: the database itself, the rules that records
/// keep, the chain of the journal, the journal played from its beginning against every table, and
/// every file with its hash, the search index, and what else lies in the folder. Of each kind of
/// fault at most 100 are listed; the others are counted, and a note says so.
///
/// Throws `UnreadableInput` when the folder is no project, or of a newer Lastrivet. Stops early,
/// with what was found so far, when `stop` asks for it.
Verification verify(const std::filesystem::path &folder, std::stop_token stop = {});

} // namespace lastrivet
