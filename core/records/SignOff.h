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

struct HoldPoint;
struct Inspection;
struct Media;
struct Person;

/// A signature for a hold point, or a late acceptance of what was closed. Never edited, only
/// withdrawn.
struct SignOff {
    static constexpr RecordType type = RecordType::SignOff;

    Id<SignOff> id;
    /// None for a sign-off that accepts a closing late.
    Id<HoldPoint> hold_point_id;
    Id<Inspection> inspection_id;
    Id<Person> person_id;
    /// The number that the person signed under.
    std::string credential;
    std::optional<Moment> signed_on;
    SignOffResult result = SignOffResult::Accepted;
    /// How the person saw what was signed for.
    Seen seen = Seen::OnSite;
    std::string remarks;
    /// The signed sheet.
    Id<Media> scan_id;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const SignOff &, const SignOff &) = default;
};

} // namespace lastrivet
