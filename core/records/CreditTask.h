// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Component;
struct Media;

/// A row of the major-portion account, in tenths.
struct CreditTask {
    static constexpr RecordType type = RecordType::CreditTask;

    Id<CreditTask> id;
    std::string section;
    std::string task;
    bool not_applicable = false;
    /// Not a row of the authority's own form: the builder added it.
    bool added = false;
    /// Who did how much of the task, in tenths; all four add up to 10, to 0 when it does not apply.
    std::int64_t kit_tenths = 0;
    std::int64_t commercial_tenths = 0;
    std::int64_t assembly_tenths = 0;
    std::int64_t fabrication_tenths = 0;
    IdSet<Component> component_ids;
    IdSet<Media> media_ids;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const CreditTask &, const CreditTask &) = default;
};

} // namespace lastrivet
