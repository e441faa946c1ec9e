// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/merge/MergeState.h"
#include "core/project/Project.h"
#include "core/project/UndoHistory.h"
#include "core/storage/Changeset.h"
#include "core/storage/Journal.h"
#include "core/storage/Opening.h"
#include "core/storage/RecordReader.h"
#include "core/storage/RecordWriter.h"
#include "core/storage/SearchIndex.h"
#include "core/storage/Transaction.h"

#include <functional>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace lastrivet::merge {
struct BroughtFiles;
}

namespace lastrivet {

/// The database and the snapshot behind a project, and the one path of every change.
class Project::Implementation {
public:
    Implementation(const std::filesystem::path &folder, storage::Opening opening, Options options);

    /// Reads the whole database: after opening, and again when it is not certain what was saved.
    void load();
    /// Fills `notices`.
    void findNotices();
    /// Writes the first row of a new project: its facts and its copy of the profile.
    void begin(std::shared_ptr<const Records> first, const Profile &profile);

    /// `undoes`: the change_id of the change that this one takes back by itself; empty for others.
    Result<ChangeNotice, Refusal> change(std::string_view label, const Body &body, ChangeKind kind,
                                         const std::string &undoes = {});
    void goOnWith(std::int64_t seq, std::string_view act);
    Result<ChangeNotice, Refusal> undo();
    std::size_t undoSize() const;
    Result<ChangeNotice, Refusal> redo();
    Result<ChangeNotice, Refusal> reverse(std::int64_t seq, std::string_view label);
    std::string notePrinted(std::string_view label,
                            const std::function<void(const std::string &hash)> &make);
    Result<MergeReport, Refusal> merge(const std::filesystem::path &other);
    std::vector<MergeConflict> conflicts() const;
    Result<ChangeNotice, Refusal> decide(std::int64_t conflict, ConflictDecision decision);

    const Clock &clock() const { return m_options.clock ? *m_options.clock : m_systemClock; }
    Moment now() const;
    /// Why the project was opened for reading only; empty when it was not.
    std::optional<Message> readOnlyMessage() const;
    bool hasWriterEnded() const;
    bool isInPlace() const;
    const std::vector<Message> &notices() const { return m_notices; }
    std::optional<Message> clockNotice() const;
    /// The database, for writing. Throws `NotWritable`.
    storage::Database &writable();

    const storage::ProjectFolder &folder() const { return m_folder; }
    const storage::Database &database() const { return *m_opening.database; }
    const Snapshot &records() const { return m_records; }
    const Profile &profile() const { return m_profile; }
    const UndoHistory &history() const { return m_history; }
    const storage::Journal &journal() const { return m_store->journal; }
    const storage::SearchIndex &searchIndex() const { return m_store->search; }

    int subscribe(Subscriber subscriber);
    void unsubscribe(int subscription);

private:
    /// Everything that works on one connection to the database.
    struct Store {
        explicit Store(storage::Database &database)
            : reader(database.sql())
            , writer(database.sql())
            , journal(database)
            , search(database)
        {
        }

        storage::RecordReader reader;
        storage::RecordWriter writer;
        storage::Journal journal;
        storage::SearchIndex search;
    };

    /// A change that is to be carried out: its row of the journal, how it is written, and how what
    /// was written is checked.
    struct Plan {
        ChangeKind kind = ChangeKind::Change;
        std::string label;
        std::string undoes;
        /// About how many rows it writes; decides how references are checked.
        std::size_t rows = 0;
        /// Writes to the database, inside the transaction.
        std::function<std::optional<Refusal>()> write;
        /// The records as they shall be, when the invariants were checked on them already; null
        /// when they are to be checked on what was written.
        const Records *checked = nullptr;
        /// Another copy's rows, oldest first, to be put into the journal before the change's own.
        std::vector<storage::JournalRow> carried = {};
        /// A last check, made when what was written breaks no invariant.
        std::function<std::optional<Refusal>()> confirm = {};
    };
    struct Outcome {
        std::shared_ptr<const Records> after;
        std::vector<RecordRef> touched;
        std::optional<JournalEntry> entry;
    };

    /// Why nothing may be changed at the moment; empty when it may.
    std::optional<Message> obstacle() const;
    /// Whether another program has added rows to the journal since this one last did.
    bool hasForeignRows() const;
    /// Notes the newest row of the journal.
    void noteRow(const JournalLine &line);
    Result<ChangeNotice, Refusal> carryOut(const Plan &plan);
    /// The same after files were copied into the folder by `bring`, which notes them in `brought`;
    /// they are taken back where nothing comes on record.
    Result<ChangeNotice, Refusal> carryOutWithFiles(const Plan &plan, merge::BroughtFiles &brought,
                                                    const std::function<void()> &bring);
    Result<Outcome, Refusal> write(const Plan &plan);
    Result<ChangeNotice, Refusal> takeBack(const UndoHistory::Change &change, ChangeKind kind);
    std::shared_ptr<const Records> readAfter(const Plan &plan,
                                             const std::vector<RecordRef> &touched);
    /// Makes the database hold `after` where it holds what is published now.
    void writeState(const merge::MergeState &after, const std::set<RecordRef> &touched);
    JournalEntry append(const Plan &plan, storage::Blob changeset, const Records &records);
    /// `records` is sorted.
    Refusal conflictRefusal(const UndoHistory::Change &change,
                            const std::vector<RecordRef> &records) const;
    /// After a commit that failed in a way that leaves its outcome unknown: opens the database
    /// again and publishes the change when it is there, else throws `exception`.
    ChangeNotice settle(const std::string &changeId, const std::string &label,
                        const SQLite::Exception &exception);
    void reopen();
    ChangeNotice publish(Outcome outcome, std::string label, ChangeKind kind);
    bool isSubscribed(int subscription) const;
    /// The profile that the records go by. Throws `UnreadableInput`.
    static Profile profileOf(const Records &records);
    std::string whoIn(const Records &records) const;

    storage::ProjectFolder m_folder;
    storage::Opening m_opening;
    Options m_options;
    SystemClock m_systemClock;
    std::unique_ptr<Store> m_store;
    Snapshot m_records;
    Profile m_profile;
    UndoHistory m_history;
    std::vector<Message> m_notices;
    /// The change_id of the newest row of the journal that this program knows.
    std::string m_newestChange;
    std::int64_t m_greatestId = 0;
    std::vector<std::pair<int, Subscriber>> m_subscribers;
    int m_lastSubscription = 0;
};

} // namespace lastrivet
