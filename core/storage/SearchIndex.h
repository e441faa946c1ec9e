// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/SearchHit.h"
#include "core/records/Records.h"
#include "core/storage/Database.h"
#include "core/storage/StatementUse.h"

#include <array>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::storage {

/// How many ranks the types of records have in a search.
inline constexpr std::size_t searchRanks = 5;

/// The full-text index over all records but the project; whoever changes records has to update it.
class SearchIndex {
public:
    /// `database` outlives it.
    explicit SearchIndex(Database &database);

    /// Files the record anew; takes it out of the index when `record` is null.
    void put(RecordRef ref, const void *record);
    /// Rebuilds the whole index, inside the caller's transaction.
    void rebuild(const Records &records);
    /// The records that are filed wrongly or not at all, and those that are filed but gone.
    std::vector<RecordRef> outOfStep(const Records &records) const;
    /// Records that hold all words of `text`, the last one as a beginning. Parts, closings, squawks
    /// and steps with the words in their title come first, in this order, those with no other words
    /// in it before them; all else, and each of these kinds, newest first. What a label's code says
    /// finds its record.
    std::vector<SearchHit> search(std::string_view text, std::size_t limit) const;

private:
    /// Those that bear this title, in small or capital letters of ASCII.
    std::vector<SearchHit> called(const std::string &terms, std::string_view title,
                                  std::size_t limit) const;
    std::vector<SearchHit> titled(const std::string &terms, std::size_t limit) const;
    /// Adds what is found by words of its title, up to the limit.
    void addTitled(std::vector<SearchHit> &hits, const std::string &terms, std::size_t limit) const;
    /// Adds what is found by any of its texts, newest first, up to the limit.
    void addOthers(std::vector<SearchHit> &hits, const std::string &terms, std::size_t limit) const;
    /// The record alone, or nothing.
    std::vector<SearchHit> at(RecordRef record) const;
    /// Drops the prepared statements, because the table is about to be replaced.
    void forget();

    Database &m_database;
    KeptStatement m_erase;
    KeptStatement m_insert;
    // Prepared when somebody first asks; asking changes nothing else.
    mutable KeptStatement m_called;
    mutable KeptStatement m_titled;
    mutable std::array<KeptStatement, searchRanks> m_anywhere;
};

/// The record's title, name, or first words.
std::string titleOf(RecordType type, const void *record);

} // namespace lastrivet::storage
