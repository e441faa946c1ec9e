// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/ProjectImplementation.h"

#include "core/base/Error.h"
#include "core/profiles/ProfileJson.h"
#include "core/profiles/ProfileLibrary.h"
#include "core/project/WorkingEdit.h"

#include <algorithm>
#include <fmt/format.h>

namespace lastrivet {

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
    m_records = std::make_shared<const Records>(m_store->reader.readAll());
    useProfile(*m_records);
    m_history = {};
    for (const auto &entry : m_store->journal.entries())
        m_history.add(entry);
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
    carryOut(plan);
}

void Project::Implementation::useProfile(const Records &records)
{
    if (records.profile_copy.empty()) {
        m_profile = ProfileLibrary::standard().profile(records.project.profile);
        return;
    }
    auto profile = readProfile(records.profile_copy);
    if (!profile)
        throw UnreadableInput(profile.reason().sentence("The project's copy of its rule profile"));
    m_profile = std::move(*profile);
}

Moment Project::Implementation::now() const
{
    return localMoment(clock().now(), m_records->project.time_zone);
}

std::string Project::Implementation::readOnlyReason() const
{
    if (!m_opening.readOnly)
        return {};
    switch (*m_opening.readOnly) {
    case storage::ReadOnlyCause::Asked:
        return "The project was opened for reading only.";
    case storage::ReadOnlyCause::FolderNotWritable:
        return "The project's folder cannot be written.";
    case storage::ReadOnlyCause::OpenElsewhere:
        break;
    }
    const auto holder = storage::WriterLock::holder(m_folder.lock());
    if (!holder)
        return "Another program has the project open for writing.";
    return fmt::format("Process {} on {} has the project open for writing since {}.",
                       holder->process, holder->host,
                       localMoment(holder->since, m_records->project.time_zone).text());
}

storage::Database &Project::Implementation::writable()
{
    if (m_opening.readOnly)
        throw NotWritable(readOnlyReason());
    return *m_opening.database;
}

void Project::Implementation::reopen()
{
    auto database = std::make_unique<storage::Database>(
        m_folder.database(), storage::Database::Access::ReadWrite, m_folder.safety());
    auto store = std::make_unique<Store>(*database);
    m_store = std::move(store);
    m_opening.database = std::move(database);
    // What a failed commit left in the log must not come back to life after a crash.
    m_opening.database->foldLogIn();
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

} // namespace lastrivet
