// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/journal/Account.h"
#include "core/packet/Aircraft.h"
#include "core/project/JournalMarks.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Who changed what, field by field, and when: the journal or a part of it, to be printed.
struct JournalReport {
    struct Entry {
        JournalEntry row;
        /// In the workshop's time.
        Moment at;
        /// What an undo or redo took back; empty for others.
        std::string undone;
        bool is_pushed_ahead = false;
        std::vector<LateDate> late;
        std::vector<journal::RecordAccount> records;
    };

    /// Which rows a person asked for; one without any wish leaves nothing out.
    struct Filter {
        /// The record whose rows they are.
        std::optional<Message> about;
        std::string words;
        std::string who;
        std::optional<ChangeKind> kind;
        /// Days, both counted in.
        std::optional<Moment> from;
        std::optional<Moment> until;

        friend bool operator==(const Filter &, const Filter &) = default;
    };

    Aircraft aircraft;
    Moment as_of;
    Filter filter;
    /// Of the whole journal.
    std::size_t rows_in_all = 0;
    /// Oldest first.
    std::vector<Entry> entries;
    std::vector<Profile::Caution> cautions;
};

/// The changes of a row, as `Project::changesOf` reads them.
using ChangesOf = std::function<std::vector<JournalChange>(std::int64_t seq)>;

/// `all` is the whole journal, oldest first; of it `wanted` is listed, by seq in rising order.
JournalReport journalReport(const Records &records, const Profile &profile, Moment asOf,
                            const std::vector<JournalEntry> &all,
                            const std::vector<std::int64_t> &wanted, const ChangesOf &changesOf);

} // namespace lastrivet::packet
