// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/EntryWords.h"
#include "core/records/Records.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lastrivet::entry {

/// Those who worked, as a line names them.
struct PeopleRead {
    std::vector<WorkSession::Worker> workers;
    /// True for `by NAME`, who worked in place of the builder.
    bool isInsteadOfBuilder = false;
    /// A name that nobody on record has; empty when all are known.
    std::string unknown;
    /// How many words behind `words` that name took, with what joins it to the one before.
    std::size_t unknown_words = 0;
    /// How many words of the line it took; 0 when it names nobody.
    std::size_t words = 0;
};

/// Reads `with Anna 45m, Bob paid` or `by Anna` from word `first` on: whole or first names, each
/// with its own time and `paid` where that is so. `last` is the first word that no longer counts.
PeopleRead readPeople(const EntryWords &line, std::size_t first, std::size_t last,
                      const Records &records);

} // namespace lastrivet::entry
