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
class Edit;
class Project;
} // namespace lastrivet

namespace lastrivet::evidence {

/// A file that was not taken in, and why.
struct IntakeFailure {
    std::filesystem::path source;
    Message why;
    /// Nothing is wrong with the file: the disk or the project did not take it this time.
    bool may_come_again = false;
};

/// What became of files that were offered.
struct IntakeReport {
    std::vector<Id<Media>> taken;
    /// Known before by their hash; they got the new links.
    std::vector<Id<Media>> already_there;
    std::vector<IntakeFailure> failures;
    /// Of files whose copy was lost or damaged, and is as it was taken in from now on: a sentence.
    std::vector<Message> put_back;

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

/// Removes the copies of a batch that will not be stored, as `removeUnnamed`: a form may have put
/// the same file on record meanwhile.
void discard(const std::filesystem::path &projectFolder, const Batch &batch);

/// Files that are copied into the project's folder and wait for their rows, which a change of the
/// caller's own puts on record: what somebody does with a picture is one change then, and one step
/// of undo.
class CopiedFiles {
public:
    /// Copies the files, on the project's thread; at most `largestBatch`. Throws `NotWritable`.
    CopiedFiles(const Project &project, const std::vector<IncomingFile> &files);

    /// True when none of the files can be put on record.
    bool isEmpty() const { return m_batch.empty(); }
    /// Those that cannot, and why.
    const std::vector<IntakeFailure> &failures() const { return m_failures; }
    /// In the body of a change: puts the rows, or joins the links to the rows of files that are
    /// known. Returns them, each once.
    std::vector<Id<Media>> put(Edit &edit) const;
    /// Removes the copies, when the change was refused or not saved, as `removeUnnamed`: after a
    /// fault it may be on record all the same.
    void discard() const;

private:
    std::filesystem::path m_folder;
    Batch m_batch;
    std::vector<IntakeFailure> m_failures;
};

/// Takes files in from beginning to end, on the project's thread, with worker threads of its own.
IntakeReport takeIn(Project &project, const std::vector<IncomingFile> &files, unsigned workers = 2,
                    const std::function<void(const IntakeProgress &)> &progress = {},
                    std::stop_token stop = {}, ChangeKind kind = ChangeKind::Change,
                    const IntakeLabel &label = plainIntakeLabel);

} // namespace lastrivet::evidence
