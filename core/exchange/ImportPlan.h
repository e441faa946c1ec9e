// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/ImportDocument.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <string>
#include <vector>

namespace lastrivet::exchange {

/// What taking a document in would do to a project, worked out before anything is changed.
struct ImportPlan {
    /// All records of the project after the import, without the hold points that the profile adds.
    Records merged;
    /// Records that are new to the project, in the order of types and ids.
    std::vector<RecordRef> added;
    /// Records that are there already with the same content.
    std::size_t skipped = 0;
    /// The files among them: one that was missing when its record came may be there now.
    std::vector<RecordRef> known_files;
    /// Everything that forbids the import; when there is any, nothing may be imported.
    InputErrors errors;
    /// The project comes with the document.
    bool is_new_project = false;
};

/// Into an existing project: known records with other content and another project are errors.
ImportPlan planImport(const DocumentReading &reading, const Records &existing,
                      const Profile &profile);
/// Into a new project.
ImportPlan planImport(const DocumentReading &reading, const Profile &profile);

/// Currencies that come with the import and are none in force by ISO 4217, each once: those of
/// added records, and that of a new project. A slip, or one of earlier years; nothing stands
/// against them.
std::vector<std::string> unknownCurrencies(const ImportPlan &plan);

/// Designations of added records that say that something was done more than a year after `today`:
/// most likely a typing error, and it would not count until then. Days on which something is
/// planned, expected or expires are not looked at.
std::vector<std::string> farAhead(const ImportPlan &plan, Moment today);

/// Gives a log entry without a part the part of its step, else of its squawk, and sorts its workers
/// by person.
void settle(WorkSession &session, const Records &records);

} // namespace lastrivet::exchange
