// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/ProjectImplementation.h"

#include "core/project/WorkingEdit.h"
#include "core/storage/Integrity.h"

#include <SQLiteCpp/Exception.h>

#include <algorithm>
#include <spdlog/spdlog.h>
#include <stdexcept>

namespace lastrivet {

namespace {

/// Above this many rows one pass over the whole database is quicker than a query for each.
constexpr std::size_t manyRows = 500;

/// Happens where the lock was lost or never held: the snapshot is out of date, and a change must
/// not be built on it.
const Message foreignRows{
    "Another program wrote to the project since it was opened here. Open it again to go on.", {}};

/// Thrown when the database cannot say whether it kept a change.
struct OutcomeUnknown {
    JournalEntry entry;
    SQLite::Exception exception;
};

/// Commits the transaction, in which `entry` is the last row of the journal.
void commit(storage::Transaction &transaction, const JournalEntry &entry)
{
    try {
        transaction.commit();
    } catch (const SQLite::Exception &exception) {
        throw OutcomeUnknown{entry, exception};
    }
}

std::vector<RecordRef> eachOnce(std::vector<RecordRef> records)
{
    std::sort(records.begin(), records.end());
    records.erase(std::unique(records.begin(), records.end()), records.end());
    return records;
}

/// What two changes did that are parts of one act.
Result<ChangeNotice, Refusal> joined(ChangeNotice first, Result<ChangeNotice, Refusal> second)
{
    if (!second)
        return second;
    first.after = second->after;
    first.touched.insert(first.touched.end(), second->touched.begin(), second->touched.end());
    first.touched = eachOnce(std::move(first.touched));
    return first;
}

bool saysTheSame(const Records &a, const Records &b, const std::vector<RecordRef> &refs)
{
    return std::all_of(refs.begin(), refs.end(), [&](RecordRef ref) {
        const void *first = a.find(ref.type, ref.id);
        const void *second = b.find(ref.type, ref.id);
        return first && second ? describe(ref.type).equal(first, second) : first == second;
    });
}

} // namespace

Result<ChangeNotice, Refusal> Project::Implementation::change(std::string_view label,
                                                              const Body &body, ChangeKind kind,
                                                              const std::string &undoes)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    const Snapshot before = m_records;
    WorkingEdit edit(*before, m_profile, clock().now(), m_greatestId);
    body(edit);
    if (m_records != before)
        throw std::logic_error("a change was made within a change");
    const auto touched = edit.touched();
    // Under other rules, records that nobody touched may be wrong too.
    auto wrong = edit.newProfile() ? violations(edit.records(), edit.profile())
                                   : violations(edit.records(), edit.profile(), touched);
    if (!wrong.empty())
        return Refusal{std::move(wrong), {}};
    Plan plan{kind, std::string(label), undoes, touched.size(), {}, &edit.records()};
    plan.write = [&]() -> std::optional<Refusal> {
        for (const auto ref : touched) {
            m_store->writer.write(ref.type, before->find(ref.type, ref.id),
                                  edit.records().find(ref.type, ref.id));
        }
        if (edit.newProfile())
            m_store->writer.writeProfile(edit.records().profile_copy);
        return std::nullopt;
    };
    return carryOut(plan);
}

void Project::Implementation::goOnWith(std::int64_t seq, std::string_view act)
{
    m_history.goOnWith(seq, act);
}

Result<ChangeNotice, Refusal> Project::Implementation::undo()
{
    const auto act = m_history.undoableAct();
    if (act.empty())
        return Refusal{{}, m_history.obstacle().value_or(Message{"There is nothing to undo.", {}})};
    auto outcome = takeBack(act.front(), ChangeKind::Undo);
    for (std::size_t i = 1; i < act.size() && outcome; ++i)
        outcome = joined(std::move(*outcome), takeBack(act[i], ChangeKind::Undo));
    return outcome;
}

std::size_t Project::Implementation::undoSize() const
{
    return storage::withFaults([&]() -> std::size_t {
        std::vector<RecordRef> touched;
        for (const auto &change : m_history.undoableAct()) {
            const auto some = storage::touchedBy(m_store->journal.changeset(change.seq));
            touched.insert(touched.end(), some.begin(), some.end());
        }
        return eachOnce(std::move(touched)).size();
    });
}

Result<ChangeNotice, Refusal> Project::Implementation::redo()
{
    const auto *change = m_history.redoable();
    if (!change)
        return Refusal{{}, {"There is nothing to redo.", {}}};
    auto outcome = takeBack(UndoHistory::Change(*change), ChangeKind::Redo);
    change = m_history.redoable();
    while (outcome && change && change->goesOn) {
        const UndoHistory::Change next = *change;
        outcome = joined(std::move(*outcome), takeBack(next, ChangeKind::Redo));
        change = m_history.redoable();
        if (change && change->seq == next.seq)
            break; // nothing was left to bring again
    }
    return outcome;
}

Result<ChangeNotice, Refusal> Project::Implementation::takeBack(const UndoHistory::Change &change,
                                                                ChangeKind kind)
{
    if (auto message = obstacle())
        return Refusal{{}, std::move(*message)};
    const auto changeset = storage::inverted(m_store->journal.changeset(change.seq));
    const auto touched = storage::touchedBy(changeset);
    Plan plan{kind, change.label, change.change_id, touched.size(), {}};
    storage::Applied applied;
    plan.write = [&]() -> std::optional<Refusal> {
        applied = storage::apply(*m_opening.database, changeset);
        if (applied.conflict)
            return conflictRefusal(change, {applied.conflict->record});
        // References are not checked row by row then; rows left without their record would only be
        // noticed when the records cannot be read again.
        const auto torn =
            plan.rows > manyRows ? storage::ownerOfLeftRows(*m_opening.database) : std::nullopt;
        return torn ? std::optional(conflictRefusal(change, {*torn})) : std::nullopt;
    };
    // A later change may have linked something to a record that would go: a picture, say.
    plan.confirm = [&]() -> std::optional<Refusal> {
        return applied.leavesDangling ? std::optional(conflictRefusal(change, touched))
                                      : std::nullopt;
    };
    return carryOut(plan);
}

Refusal Project::Implementation::conflictRefusal(const UndoHistory::Change &change,
                                                 const std::vector<RecordRef> &records) const
{
    const auto isAmong = [&](RecordRef record) {
        return std::binary_search(records.begin(), records.end(), record);
    };
    const auto lines = m_store->journal.lines();
    for (auto line = lines.rbegin(); line != lines.rend() && line->seq > change.seq; ++line) {
        const auto touched = storage::touchedBy(m_store->journal.changeset(line->seq));
        if (std::any_of(touched.begin(), touched.end(), isAmong))
            return {{},
                    {"“{0}” cannot be taken back: “{1}” (row {2} of the journal) changed the same "
                     "record later.",
                     {change.label, line->label, std::to_string(line->seq)}}};
    }
    return {{},
            {"“{0}” cannot be taken back: {1} {2} is no longer as it was left.",
             {change.label, std::string(word(records.front().type)),
              std::to_string(records.front().id)}}};
}

Result<ChangeNotice, Refusal> Project::Implementation::carryOut(const Plan &plan)
{
    return storage::withFaults([&]() -> Result<ChangeNotice, Refusal> {
        try {
            auto outcome = write(plan);
            if (!outcome)
                return outcome.reason();
            return publish(std::move(*outcome), plan.label, plan.kind);
        } catch (const OutcomeUnknown &unknown) {
            spdlog::warn("saving “{}”: {}", plan.label, unknown.exception.what());
            return settle(unknown.entry.change_id, plan.label, unknown.exception);
        }
    });
}

ChangeNotice Project::Implementation::settle(const std::string &changeId, const std::string &label,
                                             const SQLite::Exception &exception)
{
    const Snapshot before = m_records;
    reopen();
    load();
    const Snapshot loaded = std::exchange(m_records, before);
    const auto newest = m_store->journal.newest();
    if (!newest || newest->change_id != changeId)
        throw exception;
    auto touched = storage::touchedBy(m_store->journal.changeset(newest->seq));
    return publish({loaded, std::move(touched), std::nullopt}, label, newest->kind);
}

Result<Project::Implementation::Outcome, Refusal> Project::Implementation::write(const Plan &plan)
{
    const auto check = plan.rows > manyRows ? storage::ReferenceCheck::AtTheEnd
                                            : storage::ReferenceCheck::WithEachRow;
    storage::Transaction transaction(*m_opening.database, check);
    if (hasForeignRows())
        return Refusal{{}, foreignRows};
    storage::ChangeRecording recording(*m_opening.database);
    if (auto refusal = plan.write())
        return *refusal;
    auto changeset = recording.changeset();
    if (changeset.empty() && plan.carried.empty())
        return Outcome{m_records, {}, {}};
    auto touched = storage::touchedBy(changeset);
    auto after = readAfter(plan, touched);
    // Read before the commit: nobody could open a project whose rules cannot be read.
    const auto newProfile = after->profile_copy == m_records->profile_copy
                                ? std::nullopt
                                : std::optional(profileOf(*after));
    if (!plan.checked) {
        auto wrong =
            newProfile ? violations(*after, *newProfile) : violations(*after, m_profile, touched);
        if (!wrong.empty())
            return Refusal{std::move(wrong), {}};
    }
    if (auto refusal = plan.confirm ? plan.confirm() : std::nullopt)
        return *refusal;
    for (const auto ref : touched)
        m_store->search.put(ref, after->find(ref.type, ref.id));
    auto entry = append(plan, std::move(changeset), *after);
    commit(transaction, entry);
    return Outcome{std::move(after), std::move(touched), std::move(entry)};
}

std::shared_ptr<const Records>
Project::Implementation::readAfter(const Plan &plan, const std::vector<RecordRef> &touched)
{
    auto after = std::make_shared<Records>();
    if (touched.size() > manyRows) {
        *after = m_store->reader.readAll();
    } else {
        *after = *m_records;
        for (const auto ref : touched)
            m_store->reader.readAgain(*after, ref);
        after->profile_copy = m_store->reader.readProfile();
    }
    if (plan.checked && !saysTheSame(*after, *plan.checked, touched))
        throw Fault("The database did not keep what it was given; nothing was changed.",
                    Unchanged::IsSaid);
    return after;
}

JournalEntry Project::Implementation::append(const Plan &plan, storage::Blob changeset,
                                             const Records &records)
{
    storage::NewChange change{plan.kind, plan.label, plan.undoes, whoIn(records),
                              std::move(changeset)};
    if (const auto last = m_store->journal.newest(); last && !plan.carried.empty())
        change.notBefore = storage::stampAfter(last->seq, last->stamp);
    for (const auto &row : plan.carried) {
        m_store->journal.carry(row);
        change.notBefore = std::max(change.notBefore, storage::stampAfter(row.seq, row.stamp));
    }
    return m_store->journal.append(change, clock().now().time_since_epoch().count());
}

ChangeNotice Project::Implementation::publish(Outcome outcome, std::string label, ChangeKind kind)
{
    ChangeNotice notice{m_records, outcome.after, std::move(outcome.touched), std::move(label),
                        kind};
    // Merged changes may cancel out; their rows are in the journal all the same.
    if (outcome.entry)
        noteRow(*outcome.entry);
    if (notice.touched.empty())
        return notice;
    m_records = notice.after;
    if (notice.before->profile_copy != notice.after->profile_copy)
        m_profile = profileOf(*m_records);
    // A copy, because a subscriber may unsubscribe itself and others, which are then not called.
    for (const auto subscribers = m_subscribers; const auto &[number, subscriber] : subscribers) {
        if (isSubscribed(number))
            subscriber(notice);
    }
    return notice;
}

std::string
Project::Implementation::notePrinted(std::string_view label,
                                     const std::function<void(const std::string &hash)> &make)
{
    return storage::withFaults([&] {
        try {
            storage::Transaction transaction(writable());
            if (hasForeignRows())
                throw NotWritable(foreignRows);
            const auto entry = append({ChangeKind::Printed, std::string(label)}, {}, *m_records);
            make(entry.hash);
            commit(transaction, entry);
            noteRow(entry);
            return entry.hash;
        } catch (const OutcomeUnknown &unknown) {
            settle(unknown.entry.change_id, std::string(label), unknown.exception);
            return unknown.entry.hash;
        }
    });
}

bool Project::Implementation::hasForeignRows() const
{
    const auto newest = m_store->journal.newest();
    return newest && newest->change_id != m_newestChange;
}

void Project::Implementation::noteRow(const JournalLine &line)
{
    m_history.add(line);
    m_newestChange = line.change_id;
}

} // namespace lastrivet
