// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/evidence/IncomingFile.h"
#include "core/evidence/IntakeRun.h"
#include "core/evidence/PreparedFile.h"
#include "core/project/JournalEntry.h"

#include <cstddef>
#include <filesystem>
#include <functional>
#include <stop_token>
#include <string>
#include <vector>

namespace lastrivet {
class Project;
}

namespace lastrivet::evidence {

/// A file that was not taken in, and why.
struct IntakeFailure {
    std::filesystem::path source;
    Message why;
};

/// What became of files that were offered.
struct IntakeReport {
    std::vector<Id<Media>> taken;
    /// Known before by their hash; they got the new links.
    std::vector<Id<Media>> already_there;
    std::vector<IntakeFailure> failures;

    void append(IntakeReport other);
};

/// How the journal names a change that took in so many files ("40 photos taken in"); none when all
/// were there already and got links.
using IntakeLabel = std::function<std::string(std::size_t files, bool onlyPhotos)>;
/// In English.
std::string plainIntakeLabel(std::size_t files, bool onlyPhotos);

/// Stores the rows of a batch in one change, on the project's thread. When the project refuses, the
/// copies are removed and every file counts as failed. Throws what `Project::change` throws; the
/// copies then stay, because the outcome is not known.
IntakeReport store(Project &project, Batch batch, ChangeKind kind = ChangeKind::Change,
                   const IntakeLabel &label = plainIntakeLabel);

/// Removes the copies of a batch that will not be stored.
void discard(const std::filesystem::path &projectFolder, const Batch &batch);

/// Takes files in from beginning to end, on the project's thread, with worker threads of its own.
IntakeReport takeIn(Project &project, const std::vector<IncomingFile> &files, unsigned workers = 2,
                    const std::function<void(const IntakeProgress &)> &progress = {},
                    std::stop_token stop = {}, ChangeKind kind = ChangeKind::Change,
                    const IntakeLabel &label = plainIntakeLabel);

} // namespace lastrivet::evidence
