// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <chrono>
#include <optional>
#include <vector>

namespace lastrivet {

/// An edit on a copy of the records, which remembers what it touched.
class WorkingEdit final : public Edit {
public:
    /// All of these outlive it. `greatestId` is raised by every id that is given out.
    WorkingEdit(const Records &base, const Profile &profile,
                std::chrono::sys_time<std::chrono::milliseconds> now, std::int64_t &greatestId);

    const Records &records() const override { return m_records; }
    const Profile &profile() const override { return m_newProfile ? *m_newProfile : m_profile; }
    Moment now() const override;
    std::int64_t newId() override;
    void putAny(RecordType type, const void *record) override;

    void useProfile(const Profile &profile) override;
    /// The profile that was put; null while the project keeps its own.
    const Profile *newProfile() const { return m_newProfile ? &*m_newProfile : nullptr; }
    /// The records that are not as they were, each once, in order.
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

/// The greatest id of any record.
std::int64_t greatestId(const Records &records);

} // namespace lastrivet
