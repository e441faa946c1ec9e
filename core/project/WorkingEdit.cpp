// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/WorkingEdit.h"

#include "core/base/Clock.h"
#include "core/base/IdTime.h"
#include "core/profiles/ProfileJson.h"
#include "core/records/Description.h"

#include <algorithm>
#include <random>

namespace lastrivet {

namespace {

std::int64_t randomBelow(std::int64_t bound)
{
    static thread_local std::mt19937_64 random{std::random_device{}()};
    return std::uniform_int_distribution<std::int64_t>{0, bound - 1}(random);
}

/// Ids rise with time, and two copies of a project do not make the same ones.
std::int64_t idOfTime(std::chrono::sys_time<std::chrono::milliseconds> now)
{
    using namespace std::chrono;
    const auto elapsed = floor<seconds>(now) - idStart;
    return std::max<std::int64_t>(elapsed.count(), 0) * idsPerSecond + randomBelow(idsPerSecond);
}

} // namespace

WorkingEdit::WorkingEdit(const Records &base, const Profile &profile,
                         std::chrono::sys_time<std::chrono::milliseconds> now,
                         std::int64_t &greatestId)
    : m_base(base)
    , m_records(base)
    , m_profile(profile)
    , m_now(now)
    , m_greatestId(greatestId)
{
}

Moment WorkingEdit::now() const
{
    return localMoment(m_now, m_records.project.time_zone);
}

std::int64_t WorkingEdit::newId()
{
    const auto id = std::max(idOfTime(m_now), m_greatestId + 1);
    if (id <= largestId) {
        m_greatestId = id;
        return id;
    }
    // An import brought in the largest possible id; there are free ones below it.
    std::int64_t drawn = idOfTime(m_now);
    while (drawn < 1 || isTaken(drawn))
        drawn = 1 + randomBelow(largestId);
    return drawn;
}

bool WorkingEdit::isTaken(std::int64_t id) const
{
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i) {
        if (m_records.find(RecordType(i), id))
            return true;
    }
    return false;
}

void WorkingEdit::putAny(RecordType type, const void *record)
{
    const auto id = idOf(describe(type), record);
    m_put.push_back({type, id});
    m_greatestId = std::max(m_greatestId, std::min(id, largestId));
    if (type != RecordType::WorkSession) {
        m_records.put(type, record);
        return;
    }
    // Workers are a set, keyed by person; the database keeps no order of them.
    auto session = *static_cast<const WorkSession *>(record);
    std::stable_sort(session.workers.begin(), session.workers.end(),
                     [](const auto &a, const auto &b) { return a.person_id < b.person_id; });
    m_records.put(type, &session);
}

void WorkingEdit::useProfile(const Profile &profile)
{
    m_newProfile = profile;
    m_records.profile_copy = profileJson(profile);
    ProjectFacts facts = m_records.project;
    facts.profile = profile.id;
    putAny(RecordType::Project, &facts);
}

std::vector<RecordRef> WorkingEdit::touched() const
{
    auto touched = m_put;
    std::sort(touched.begin(), touched.end());
    touched.erase(std::unique(touched.begin(), touched.end()), touched.end());
    std::erase_if(touched, [this](RecordRef ref) {
        const void *before = m_base.find(ref.type, ref.id);
        return before && describe(ref.type).equal(before, m_records.find(ref.type, ref.id));
    });
    return touched;
}

std::int64_t greatestId(const Records &records)
{
    std::int64_t greatest = 0;
    for (std::size_t i = std::size_t(RecordType::Person); i < recordTypeCount; ++i)
        greatest = std::max(greatest, records.table(RecordType(i)).greatestId());
    return greatest;
}

} // namespace lastrivet
