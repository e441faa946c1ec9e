// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Clock.h"
#include "core/base/Result.h"
#include "core/profiles/Profile.h"
#include "core/project/Edit.h"
#include "core/project/JournalEntry.h"
#include "core/project/MergeConflict.h"
#include "core/project/SearchHit.h"
#include "core/records/Records.h"
#include "core/records/invariants/Invariants.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// A snapshot of the records that never changes; may be kept and read on any thread.
using Snapshot = std::shared_ptr<const Records>;

/// What a change did: told to subscribers after it is durable.
struct ChangeNotice {
    Snapshot before;
    Snapshot after;
    std::vector<RecordRef> touched;
    std::string label;
    ChangeKind kind = ChangeKind::Change;
};

/// Why a change was not made; nothing is different from before.
struct Refusal {
    std::vector<Violation> violations;
    /// Said in place of violations: nothing to undo, a later change is in the way, read-only.
    Message message;
};

/// In English, one sentence per reason, joined by spaces.
std::string english(const Refusal &refusal);

/// The one door to a project folder: reading is by snapshot, every change goes through `change`.
///
/// One thread at a time may use it. Opening and saving throw `Fault`s that say what happened in one
/// sentence.
class Project {
public:
    struct Options {
        /// Lives as long as the project.
        const Clock *clock = nullptr;
        /// Whose changes these are; the project's builder when empty.
        std::string who;
        bool readOnly = false;
    };

    /// Makes an empty project folder; throws when something is there already.
    static std::unique_ptr<Project> create(const std::filesystem::path &folder, ProjectFacts facts,
                                           const Profile &profile, Options options);
    /// Opens a project folder. When another program writes to it, the project is read-only and
    /// `readOnlyReason` says who and since when.
    static std::unique_ptr<Project> open(const std::filesystem::path &folder, Options options);
    ~Project();

    Snapshot records() const;
    const Profile &profile() const;
    const std::filesystem::path &folder() const;
    bool isReadOnly() const;
    /// Empty when the project can be written.
    std::string readOnlyReason() const;
    Message readOnlyMessage() const;
    /// Whether the program that kept this one from writing has closed the project since, or ended,
    /// so that it can be opened anew for writing; false where that cannot be told.
    bool hasWriterEnded() const;
    /// False while the folder's path does not lead to the database that was opened: renamed, moved,
    /// unplugged, or another in its place. Changes are refused until it does again.
    bool isInPlace() const;
    /// What somebody should know of how the project lies: second databases beside it, a network
    /// folder. As it was found at opening, a sentence each.
    const std::vector<Message> &notices() const;
    /// Why this computer's clock can hardly be right now, as that of a computer whose battery is
    /// empty; nothing when it may well be. Reads the newest row of the journal.
    std::optional<Message> clockNotice() const;
    Moment now() const;
    Moment today() const { return now().dayOnly(); }

    using Body = std::function<void(Edit &)>;
    /// Makes one durable, journalled change named `label` ("Squawk 12 fixed"), or none at all.
    /// An exception from `body` passes through and nothing is changed.
    Result<ChangeNotice, Refusal> change(std::string_view label, const Body &body,
                                         ChangeKind kind = ChangeKind::Change);

    /// What undo would take back; empty when there is nothing.
    std::optional<std::string> undoLabel() const;
    std::optional<std::string> redoLabel() const;
    /// How many records undo would change; reads the journal.
    std::size_t undoSize() const;
    /// Why changes that were made cannot be undone, as after a merge, and what can be done; empty
    /// where something can be undone, or nothing was changed.
    std::optional<Message> undoBar() const;
    Result<ChangeNotice, Refusal> undo();
    Result<ChangeNotice, Refusal> redo();
    /// Takes back what the row `seq` of the journal changed, however long ago, by a change of its
    /// own named `label`: fields become what they were, and what was made is withdrawn for that
    /// reason. Refused when something changed there since, which the refusal names. What `undo`
    /// would take back is undone.
    Result<ChangeNotice, Refusal> reverse(std::int64_t seq, std::string_view label);

    /// Brings in what another copy of this project has and this one has not: its changes, and the
    /// files that they name. `other` is the copy's folder or its database file; it is only read.
    /// The outcome is the same in whichever copy it is done. Throws `UnreadableInput` when the
    /// other is no copy of this project.
    Result<MergeReport, Refusal> merge(const std::filesystem::path &other);
    /// What merges could not settle, decided or not, by id.
    std::vector<MergeConflict> conflicts() const;
    /// A person's decision about a conflict, as a change of its own.
    Result<ChangeNotice, Refusal> decide(std::int64_t conflict, ConflictDecision decision);

    /// Every journal row behind the row `after`, oldest first, without changesets.
    std::vector<JournalEntry> journal(std::int64_t after = 0) const;
    /// The same of all rows without their hashes, which is much quicker.
    std::vector<JournalLine> journalLines() const;
    /// What a row changed, field by field; reads its changeset.
    std::vector<JournalChange> changesOf(std::int64_t seq) const;
    /// The same of at most `most` records, `first` before all others: an import may have changed
    /// a hundred thousand.
    SomeChanges someChangesOf(std::int64_t seq, std::size_t most,
                              std::optional<RecordRef> first = {}) const;
    /// The hash of the newest journal row, 64 hex digits; empty before the first.
    std::string journalHash() const;
    /// The hash of the oldest one, which all copies of the project share.
    std::string oldestJournalHash() const;
    /// Writes a `printed` row for a document that is about to be made, and returns its hash; of a
    /// project that is only read, the hash of the newest row.
    std::string notePrinted(std::string_view label);

    /// Records whose texts hold all words, the last one as a beginning: parts, closings, squawks
    /// and steps with the words in their title, in this order, then all others; of equals the
    /// newest first. What a label's code says finds its record alone.
    std::vector<SearchHit> search(std::string_view text, std::size_t limit = 50) const;

    /// Small things of this computer that are no records (the running timer); not journalled. In a
    /// project that is only read, `setLocalState` throws `NotWritable`.
    std::optional<std::string> localState(std::string_view key) const;
    void setLocalState(std::string_view key, std::optional<std::string_view> value);

    using Subscriber = std::function<void(const ChangeNotice &)>;
    /// Calls after every change until `unsubscribe`.
    int subscribe(Subscriber subscriber);
    void unsubscribe(int subscription);

private:
    class Implementation;
    explicit Project(std::unique_ptr<Implementation> implementation);

    std::unique_ptr<Implementation> m_implementation;
};

} // namespace lastrivet
