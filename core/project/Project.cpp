// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/Project.h"

#include "core/base/Error.h"
#include "core/base/Tongue.h"
#include "core/evidence/files/NewFile.h"
#include "core/profiles/ProfileJson.h"
#include "core/project/ProjectImplementation.h"
#include "core/storage/JournalChanges.h"
#include "core/storage/LocalState.h"

#include <string_view>
#include <system_error>
#include <utility>

namespace lastrivet {

namespace {

auto timeOf(const Project::Options &options)
{
    return options.clock ? options.clock->now() : SystemClock{}.now();
}

/// What a new project begins with; throws when that breaks a rule.
std::shared_ptr<const Records> firstRecords(ProjectFacts facts, const Profile &profile)
{
    auto first = std::make_shared<Records>();
    first->project = std::move(facts);
    if (first->project.profile.empty())
        first->project.profile = profile.id;
    first->profile_copy = profile.json.empty() ? profileJson(profile) : profile.json;
    if (auto wrong = violations(*first, profile); !wrong.empty())
        throw UnreadableInput(messageOf(Refusal{std::move(wrong), {}}));
    return first;
}

} // namespace

Message messageOf(const Refusal &refusal)
{
    constexpr std::string_view places = "{0} {1} {2} {3} {4} {5} {6} {7}";
    // A place and the blank behind it.
    constexpr std::size_t each = 4;
    constexpr std::size_t mostPlaces = (places.size() + 1) / each;
    std::vector<std::string> sentences;
    if (!refusal.message.pattern.empty())
        sentences.push_back(nested(refusal.message));
    for (const Violation &violation : refusal.violations) {
        if (sentences.size() < mostPlaces)
            sentences.push_back(nested(violation.message));
    }
    if (sentences.empty())
        return {};
    return {places.substr(0, sentences.size() * each - 1), std::move(sentences)};
}

std::string english(const Refusal &refusal)
{
    std::string text = english(refusal.message);
    for (const auto &violation : refusal.violations)
        text += (text.empty() ? "" : " ") + english(violation.message);
    return text;
}

Project::Project(std::unique_ptr<Implementation> implementation)
    : m_implementation(std::move(implementation))
{
}

Project::~Project() = default;

std::unique_ptr<Project> Project::create(const std::filesystem::path &folder, ProjectFacts facts,
                                         const Profile &profile, Options options)
{
    const storage::ProjectFolder place(folder);
    place.requireFree();
    std::error_code none;
    const bool wasThere = std::filesystem::exists(std::filesystem::symlink_status(folder, none));
    const auto first = firstRecords(std::move(facts), profile);
    try {
        return storage::withFaults([&] {
            place.make(first->project.name);
            auto made = std::make_unique<Implementation>(
                folder, storage::createDatabase(place, timeOf(options)), options);
            made->begin(first, profile);
            return std::unique_ptr<Project>(new Project(std::move(made)));
        });
    } catch (const storage::MadeElsewhere &) {
        throw;
    } catch (...) {
        place.unmake(wasThere);
        throw;
    }
}

std::unique_ptr<Project> Project::open(const std::filesystem::path &folder, Options options)
{
    return storage::withFaults([&] {
        auto opening = storage::openDatabase(storage::ProjectFolder(folder), options.readOnly,
                                             timeOf(options));
        if (opening.lock && opening.lock->isAfterCrash())
            evidence::sweepLeftovers(folder);
        auto opened = std::make_unique<Implementation>(folder, std::move(opening), options);
        opened->load();
        opened->findNotices();
        return std::unique_ptr<Project>(new Project(std::move(opened)));
    });
}

Snapshot Project::records() const
{
    return m_implementation->records();
}

const Profile &Project::profile() const
{
    return m_implementation->profile();
}

const std::filesystem::path &Project::folder() const
{
    return m_implementation->folder().root();
}

bool Project::isReadOnly() const
{
    return m_implementation->readOnlyMessage().has_value();
}

Message Project::readOnlyMessage() const
{
    return m_implementation->readOnlyMessage().value_or(Message{});
}

std::string Project::readOnlyReason() const
{
    return english(readOnlyMessage());
}

bool Project::hasWriterEnded() const
{
    return m_implementation->hasWriterEnded();
}

bool Project::isInPlace() const
{
    return m_implementation->isInPlace();
}

const std::vector<Message> &Project::notices() const
{
    return m_implementation->notices();
}

std::optional<Message> Project::clockNotice() const
{
    return storage::withFaults([this] { return m_implementation->clockNotice(); });
}

Moment Project::now() const
{
    return m_implementation->now();
}

Result<ChangeNotice, Refusal> Project::change(std::string_view label, const Body &body,
                                              ChangeKind kind)
{
    return m_implementation->change(label, body, kind);
}

void Project::goOnWith(std::int64_t seq, std::string_view act)
{
    m_implementation->goOnWith(seq, act);
}

std::int64_t Project::undoRow() const
{
    const auto *change = m_implementation->history().undoable();
    return change ? change->seq : 0;
}

std::optional<std::string> Project::undoLabel() const
{
    const auto *change = m_implementation->history().undoable();
    return change ? std::optional(change->actLabel()) : std::nullopt;
}

std::optional<std::string> Project::redoLabel() const
{
    const auto *change = m_implementation->history().redoable();
    return change ? std::optional(change->actLabel()) : std::nullopt;
}

std::size_t Project::undoSize() const
{
    return m_implementation->undoSize();
}

std::optional<Message> Project::undoObstacle() const
{
    return m_implementation->history().obstacle();
}

Result<ChangeNotice, Refusal> Project::undo()
{
    return storage::withFaults([&] { return m_implementation->undo(); });
}

Result<ChangeNotice, Refusal> Project::redo()
{
    return storage::withFaults([&] { return m_implementation->redo(); });
}

Result<ChangeNotice, Refusal> Project::reverse(std::int64_t seq, std::string_view label)
{
    return storage::withFaults([&] { return m_implementation->reverse(seq, label); });
}

Result<MergeReport, Refusal> Project::merge(const std::filesystem::path &other)
{
    return m_implementation->merge(other);
}

std::vector<MergeConflict> Project::conflicts() const
{
    return storage::withFaults([&] { return m_implementation->conflicts(); });
}

Result<ChangeNotice, Refusal> Project::decide(std::int64_t conflict, ConflictDecision decision)
{
    return m_implementation->decide(conflict, decision);
}

std::vector<JournalEntry> Project::journal(std::int64_t after) const
{
    return storage::withFaults([&] { return m_implementation->journal().entries(after); });
}

std::vector<JournalLine> Project::journalLines() const
{
    return storage::withFaults([&] { return m_implementation->journal().lines(); });
}

std::vector<JournalChange> Project::changesOf(std::int64_t seq) const
{
    return storage::withFaults(
        [&] { return storage::journalChanges(m_implementation->journal().changeset(seq)); });
}

SomeChanges Project::someChangesOf(std::int64_t seq, std::size_t most,
                                   std::optional<RecordRef> first) const
{
    return storage::withFaults([&] {
        return storage::someJournalChanges(m_implementation->journal().changeset(seq), most, first);
    });
}

std::string Project::journalHash() const
{
    return storage::withFaults([&] { return m_implementation->journal().newestHash(); });
}

std::string Project::oldestJournalHash() const
{
    return storage::withFaults([&] { return m_implementation->journal().oldestHash(); });
}

std::string Project::notePrinted(std::string_view label)
{
    return notePrinted(label, [](const std::string &) {});
}

std::string Project::notePrinted(std::string_view label,
                                 const std::function<void(const std::string &hash)> &make)
{
    if (!isReadOnly())
        return m_implementation->notePrinted(label, make);
    const std::string newest = journalHash();
    make(newest);
    return newest;
}

std::vector<SearchHit> Project::search(std::string_view text, std::size_t limit) const
{
    return storage::withFaults([&] { return m_implementation->searchIndex().search(text, limit); });
}

std::optional<std::string> Project::localState(std::string_view key) const
{
    return storage::withFaults(
        [&] { return storage::localState(m_implementation->database(), key); });
}

void Project::setLocalState(std::string_view key, std::optional<std::string_view> value)
{
    storage::withFaults([&] { storage::setLocalState(m_implementation->writable(), key, value); });
}

int Project::subscribe(Subscriber subscriber)
{
    return m_implementation->subscribe(std::move(subscriber));
}

void Project::unsubscribe(int subscription)
{
    m_implementation->unsubscribe(subscription);
}

} // namespace lastrivet
