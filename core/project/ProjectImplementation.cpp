// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/ProjectImplementation.h"

#include "core/base/Error.h"
#include "core/base/IdTime.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/ReadOnlyReason.h"
#include "core/project/WorkingEdit.h"
#include "core/storage/StrayDatabases.h"
#include "core/storage/WholeReading.h"

#include <algorithm>
#include <chrono>

namespace lastrivet {

namespace {

/// In milliseconds: a clock that was a little fast and has been set since is not worth a notice.
constexpr std::int64_t clockTolerance = 60'000;
/// In milliseconds. A project may really have rested for longer; but a clock that is years ahead
/// would date the journal wrongly until that time has come.
constexpr std::int64_t longestRest = std::chrono::milliseconds{std::chrono::years{10}}.count();

std::string localTime(std::int64_t stamp, std::string_view zone)
{
    using namespace std::chrono;
    return localMoment(sys_time<milliseconds>(milliseconds(stamp)), zone).text();
}

} // namespace

Project::Implementation::Implementation(const std::filesystem::path &folder,
                                        storage::Opening opening, Options options)
    : m_folder(folder)
    , m_opening(std::move(opening))
    , m_options(std::move(options))
    , m_store(std::make_unique<Store>(*m_opening.database))
{
}

void Project::Implementation::load()
{
    const storage::ReadTransaction reading(*m_opening.database);
    m_records = std::make_shared<const Records>(storage::readWhole(*m_opening.database));
    m_profile = profileOf(*m_records);
    m_history = {};
    m_newestChange.clear();
    for (const auto &line : m_store->journal.lines())
        noteRow(line);
    m_greatestId = std::max(m_greatestId, greatestId(*m_records));
}

void Project::Implementation::begin(std::shared_ptr<const Records> first, const Profile &profile)
{
    m_records = first;
    m_profile = profile;
    Plan plan{ChangeKind::Migration, "Project begun", {}, 1, {}, first.get()};
    plan.write = [&]() -> std::optional<Refusal> {
        m_store->writer.write(RecordType::Project, nullptr, &first->project);
        m_store->writer.writeProfile(first->profile_copy);
        return std::nullopt;
    };
    // The invariants were checked before, and the database was made just now: what refuses it all
    // the same is a fault, and the folder is taken away again.
    if (const auto begun = carryOut(plan); !begun)
        throw Fault(english(begun.reason()));
}

Profile Project::Implementation::profileOf(const Records &records)
{
    if (records.profile_copy.empty())
        return ProfileLibrary::standard().profile(records.project.profile);
    auto profile = readProfile(records.profile_copy);
    if (!profile)
        throw UnreadableInput(profile.reason().sentenceOfCopy());
    return std::move(*profile);
}

Moment Project::Implementation::now() const
{
    return localMoment(clock().now(), m_records->project.time_zone);
}

std::optional<Message> Project::Implementation::readOnlyMessage() const
{
    return lastrivet::readOnlyReason(m_opening, m_records->project.time_zone);
}

bool Project::Implementation::hasWriterEnded() const
{
    return m_opening.readOnly == storage::ReadOnlyCause::OpenElsewhere && m_opening.holder &&
           isInPlace() && storage::WriterLock::isSignedByNobody(m_folder.lock());
}

bool Project::Implementation::isInPlace() const
{
    const auto now = storage::identityOf(m_folder.database());
    return now && now == m_opening.identity;
}

std::optional<Message> Project::Implementation::obstacle() const
{
    if (auto message = readOnlyMessage())
        return message;
    if (!isInPlace())
        return Message{
            "The project's folder is no longer at {0}; nothing is changed until it is back, "
            "or is opened where it is now.",
            {m_folder.root().string()}};
    return std::nullopt;
}

void Project::Implementation::findNotices()
{
    m_notices.clear();
    for (const auto &stray : storage::strayDatabases(m_folder))
        m_notices.push_back(
            {"A second database lies in the project's folder: {0}. What is in it is not "
             "shown.",
             {stray.filename().string()}});
    if (m_opening.safety == storage::Database::Safety::RollbackJournal)
        m_notices.push_back(
            {"The project lies on a network folder or the like: saving takes longer "
             "there, and only one program can be at it.",
             {}});
}

std::optional<Message> Project::Implementation::clockNotice() const
{
    const auto zone = m_records->project.time_zone;
    const auto stamp = clock().now().time_since_epoch().count();
    const auto newest = m_store->journal.newest();
    if (newest && newest->stamp > stamp + clockTolerance)
        return Message{
            "The clock of this computer says {0}, which is before the newest row of the journal "
            "({1}): it is wrong now, or it was ahead then. What must stay open, what has expired "
            "and the days of what is written down go by this clock. The order of the journal "
            "holds.",
            {localTime(stamp, zone), localTime(newest->stamp, zone)}};
    if (clock().now() < idStart)
        return Message{
            "The clock of this computer says {0}, which cannot be. What must stay open, what has "
            "expired and the days of what is written down go by this clock; set it first.",
            {localTime(stamp, zone)}};
    if (newest && stamp - newest->stamp > longestRest)
        return Message{
            "The clock of this computer says {0}, and the newest row of the journal is of {1}. If "
            "the clock is wrong, set it before you write anything down: what must stay open, what "
            "has expired and the days of what is written down go by it.",
            {localTime(stamp, zone), localTime(newest->stamp, zone)}};
    return std::nullopt;
}

storage::Database &Project::Implementation::writable()
{
    if (const auto message = obstacle())
        throw NotWritable(*message);
    return *m_opening.database;
}

void Project::Implementation::reopen()
{
    if (const auto message = obstacle())
        throw NotWritable(*message);
    auto database = std::make_unique<storage::Database>(
        m_folder.database(), storage::Database::Access::ReadWrite, m_opening.safety);
    auto store = std::make_unique<Store>(*database);
    m_store = std::move(store);
    m_opening.database = std::move(database);
    // A failed commit may have left pages in the write-ahead log; a crash must not revive them.
    m_opening.database->checkpoint();
}

std::string Project::Implementation::whoIn(const Records &records) const
{
    if (!m_options.who.empty())
        return m_options.who;
    const auto *builder = records.find(records.project.builder_id);
    return builder ? builder->name : std::string();
}

int Project::Implementation::subscribe(Subscriber subscriber)
{
    m_subscribers.emplace_back(++m_lastSubscription, std::move(subscriber));
    return m_lastSubscription;
}

void Project::Implementation::unsubscribe(int subscription)
{
    std::erase_if(m_subscribers, [=](const auto &known) { return known.first == subscription; });
}

bool Project::Implementation::isSubscribed(int subscription) const
{
    return std::any_of(m_subscribers.begin(), m_subscribers.end(),
                       [=](const auto &known) { return known.first == subscription; });
}

} // namespace lastrivet
