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
    /// What the project would hold, but for hold points that the profile asks for.
    Records merged;
    /// Records that are new to the project, in the order of types and ids.
    std::vector<RecordRef> added;
    /// Records that are there already with the same content.
    std::size_t skipped = 0;
    /// Those of files among them: what was not there when they came may be there now.
    std::vector<RecordRef> known_files;
    /// Everything that stands against it; then nothing of it may be done.
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

/// Added records that say of something that it was done more than a year after `today`, as people
/// point at them: most likely a slip of the pen, and nothing of it counts until then. Days on which
/// something is planned, expected or runs out are none of these.
std::vector<std::string> farAhead(const ImportPlan &plan, Moment today);

/// Gives a log entry without a part that of its step, else of its squawk, and puts those who worked
/// in order: who comes first says nothing.
void settle(WorkSession &session, const Records &records);

} // namespace lastrivet::exchange
