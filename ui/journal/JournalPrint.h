// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/JournalReport.h"
#include "ui/prints/PrintTask.h"

#include <QString>

#include <cstddef>
#include <cstdint>
#include <vector>

namespace lastrivet::ui {

/// What of the journal is to be printed.
struct JournalListing {
    /// The rows, by seq in rising order.
    std::vector<std::int64_t> rows;
    packet::JournalReport::Filter filter;
    /// Of the whole journal when it was listed; the printing adds one.
    std::size_t rows_in_all = 0;
};

/// Prints these rows of the journal on a worker.
void printJournal(Session &session, JournalListing listing, const QString &file);

} // namespace lastrivet::ui
