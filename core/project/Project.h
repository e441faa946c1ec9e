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

/// What a change did; passed to subscribers once it is durable.
struct ChangeNotice {
    Snapshot before;
    Snapshot after;
    /// The records that differ, each once, in order.
    std::vector<RecordRef> touched;
    std::string label;
    ChangeKind kind = ChangeKind::Change;
};

/// Why a change was not made. Everything is as it was before; only of an act of several changes
/// those stay undone, or done again, that came before the one that was refused.
struct Refusal {
    /// The invariants that the change would have broken.
    std::vector<Violation> violations;
    /// Any other reason, in place of violations: nothing to undo, a later change, read-only.
    Message message;
    /// Of `reverse`: the row holds nothing that it could take back, whatever else stands.
    bool has_nothing = false;
};

/// One sentence per reason, joined by spaces, of the first eight.
Message messageOf(const Refusal &refusal);
/// In English, of all of them.
std::string english(const Refusal &refusal);

/// A project folder that is open: it is read by snapshots, and every change goes through `change`.
///
/// To be used by one thread at a time. What touches the disk throws a `Fault` when that fails.
class Project {
public:
    struct Options {
        /// Outlives the project; the computer's clock when null.
        const Clock *clock = nullptr;
        /// The name that changes are journalled under; the project's builder when empty.
        std::string who;
        bool readOnly = false;
    };

    /// Makes a new project in a folder that is empty or does not exist; throws when anything is
    /// there already, and when `facts` break an invariant.
    static std::unique_ptr<Project> create(const std::filesystem::path &folder, ProjectFacts facts,
                                           const Profile &profile, Options options);
    /// Opens a project folder. While another program has it open for writing, the project is
    /// read-only, and `readOnlyReason` says who has it and since when.
    static std::unique_ptr<Project> open(const std::filesystem::path &folder, Options options);
    ~Project();

    Snapshot records() const;
    const Profile &profile() const;
    const std::filesystem::path &folder() const;
    bool isReadOnly() const;
    /// Empty when the project can be written.
    std::string readOnlyReason() const;
    /// The same, to be put into another language.
    Message readOnlyMessage() const;
    /// Whether the program that had the project open for writing has closed it since, or ended, so
    /// that it can be opened again for writing; false where that cannot be told.
    bool hasWriterEnded() const;
    /// False while the folder's path does not lead to the database that was opened: the folder was
    /// renamed or moved, its disk unplugged, or there is another one in its place. Changes are
    /// refused until the path is right again.
    bool isInPlace() const;
    /// Warnings about where the project is stored, as found when it was opened: second databases
    /// beside its own, a network folder. One sentence each.
    const std::vector<Message> &notices() const;
    /// Why this computer's clock is probably wrong, for instance after its battery ran empty;
    /// nothing when it seems right. Reads the newest row of the journal.
    std::optional<Message> clockNotice() const;
    /// Local workshop time, to the minute.
    Moment now() const;
    Moment today() const { return now().dayOnly(); }

    using Body = std::function<void(Edit &)>;
    /// Makes what `body` does one durable, journalled change named `label` ("Squawk 12 fixed"), or
    /// changes nothing and says why. Nor is anything changed when `body` throws.
    Result<ChangeNotice, Refusal> change(std::string_view label, const Body &body,
                                         ChangeKind kind = ChangeKind::Change);

    /// Says that the next change goes on with the act of a person whose newest change is row `seq`
    /// of the journal: undo and redo take them together, under the name `act`, until the project is
    /// closed. When another change comes between, it is an act of its own, as it is with 0.
    void goOnWith(std::int64_t seq, std::string_view act);
    /// The row of the journal that undo begins with; 0 when there is none.
    std::int64_t undoRow() const;

    /// What undo would take back; empty when there is nothing.
    std::optional<std::string> undoLabel() const;
    std::optional<std::string> redoLabel() const;
    /// How many records undo would change; reads the journal.
    std::size_t undoSize() const;
    /// Why the changes that were made cannot be undone, as after a merge, and what can be done
    /// instead; nothing when undo is possible, or when there was no change.
    std::optional<Message> undoObstacle() const;
    Result<ChangeNotice, Refusal> undo();
    Result<ChangeNotice, Refusal> redo();
    /// Takes back what row `seq` of the journal changed, however long ago, by a new change named
    /// `label`: changed records become what they were, and records that the row added are withdrawn
    /// with `label` as the reason. Refused when a later row changed one of them, which the refusal
    /// names. When `seq` is the row that `undo` would begin with, it is undone instead, without
    /// what else belongs to its act.
    Result<ChangeNotice, Refusal> reverse(std::int64_t seq, std::string_view label);

    /// Brings in the changes that another copy of this project has and this one lacks, and the
    /// files that they name. `other` is the copy's folder or its database file; it is only read.
    /// The records that result are the same in whichever of the two copies this is done. Throws
    /// `UnreadableInput` when `other` is no copy of this project.
    Result<MergeReport, Refusal> merge(const std::filesystem::path &other);
    /// What merges could not settle, decided since or not, by id.
    std::vector<MergeConflict> conflicts() const;
    /// Carries out a person's decision about a conflict, as a change of its own.
    Result<ChangeNotice, Refusal> decide(std::int64_t conflict, ConflictDecision decision);

    /// The journal's rows with a `seq` greater than `after`, oldest first, without changesets.
    std::vector<JournalEntry> journal(std::int64_t after = 0) const;
    /// All rows without their hashes, which is much quicker.
    std::vector<JournalLine> journalLines() const;
    /// What a row changed, field by field; reads its changeset.
    std::vector<JournalChange> changesOf(std::int64_t seq) const;
    /// The same of at most `most` records, `first` before all others: an import may have changed
    /// a hundred thousand.
    SomeChanges someChangesOf(std::int64_t seq, std::size_t most,
                              std::optional<RecordRef> first = {}) const;
    /// The hash of the newest journal row, 64 hex digits; empty before the first.
    std::string journalHash() const;
    /// The hash of the oldest row, which all copies of the project share.
    std::string oldestJournalHash() const;
    /// Adds a `printed` row to the journal for a document that is about to be made, and returns its
    /// hash; in a read-only project only returns the hash of the newest row.
    std::string notePrinted(std::string_view label);
    /// The same around the making of the document: `make` gets the hash, and where it throws, or
    /// the row cannot be written, there is no row. What `make` made is then to be given up. `make`
    /// must not change the project.
    std::string notePrinted(std::string_view label,
                            const std::function<void(const std::string &hash)> &make);

    /// Records whose texts contain all words; the last word may be unfinished. First parts,
    /// closings, squawks and steps with the words in their title, in this order, then all others;
    /// of equals the newest first. The text of a printed label's code finds exactly its record.
    std::vector<SearchHit> search(std::string_view text, std::size_t limit = 50) const;

    /// State of this computer that is no part of the records, such as the running timer; it is not
    /// journalled. Without a value the key is removed. In a read-only project `setLocalState`
    /// throws `NotWritable`.
    std::optional<std::string> localState(std::string_view key) const;
    void setLocalState(std::string_view key, std::optional<std::string_view> value);

    using Subscriber = std::function<void(const ChangeNotice &)>;
    /// Calls `subscriber` after every change, until `unsubscribe` is given the returned number.
    int subscribe(Subscriber subscriber);
    void unsubscribe(int subscription);

private:
    class Implementation;
    explicit Project(std::unique_ptr<Implementation> implementation);

    std::unique_ptr<Implementation> m_implementation;
};

} // namespace lastrivet
