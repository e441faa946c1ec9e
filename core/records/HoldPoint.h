// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Closing;
struct Person;

/// A point where a closing waits for a signature.
struct HoldPoint {
    static constexpr RecordType type = RecordType::HoldPoint;

    Id<HoldPoint> id;
    Id<Closing> closing_id;
    HoldPointKind kind = HoldPointKind::OwnCheck;
    /// The lowest role that may sign; a higher one may sign in its place.
    SignerRole signer_role = SignerRole::Builder;
    bool required = true;
    /// Where the demand comes from.
    std::string source;
    /// Empty for the hold points of the profile; else it exists from this day on.
    std::optional<Moment> planned_on;
    std::optional<Moment> waived_on;
    Id<Person> waived_by;
    std::string waived_why;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const HoldPoint &, const HoldPoint &) = default;
};

} // namespace lastrivet
