// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/readiness/SquawkFilter.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

class Session;

/// A list of squawks on its way out of the program, and what was left out of it.
struct SquawkListing {
    std::vector<readiness::ListedSquawk> list;
    std::vector<Message> filter;
};

/// Writes the list as PDF and says so in the journal and at the foot of the window.
void printSquawks(Session &session, const SquawkListing &listing, const QString &file);
/// Writes the list as CSV for a spreadsheet.
void exportSquawks(Session &session, const SquawkListing &listing, const QString &file);

} // namespace lastrivet::ui
