// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <chrono>
#include <optional>
#include <vector>

namespace lastrivet {

/// The edit that `Project::change` hands out: works on a copy of the records and notes what it
/// touched.
class WorkingEdit final : public Edit {
public:
    /// The references must outlive it. `greatestId` is raised to every id that is given out or put.
    WorkingEdit(const Records &base, const Profile &profile,
                std::chrono::sys_time<std::chrono::milliseconds> now, std::int64_t &greatestId);

    const Records &records() const override { return m_records; }
    const Profile &profile() const override { return m_newProfile ? *m_newProfile : m_profile; }
    Moment now() const override;
    std::int64_t newId() override;
    void putAny(RecordType type, const void *record) override;

    void useProfile(const Profile &profile) override;
    /// The profile given to `useProfile`; null while the project keeps its own.
    const Profile *newProfile() const { return m_newProfile ? &*m_newProfile : nullptr; }
    /// The records that differ from `base`, each once, in order.
    std::vector<RecordRef> touched() const;

private:
    bool isTaken(std::int64_t id) const;

    const Records &m_base;
    Records m_records;
    const Profile &m_profile;
    std::chrono::sys_time<std::chrono::milliseconds> m_now;
    std::int64_t &m_greatestId;
    std::vector<RecordRef> m_put;
    std::optional<Profile> m_newProfile;
};

/// The greatest id of any record; 0 when there is none.
std::int64_t greatestId(const Records &records);

} // namespace lastrivet
