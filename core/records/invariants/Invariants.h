// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/profiles/Profile.h"
#include "core/records/RecordType.h"
#include "core/records/Records.h"

#include <span>
#include <vector>

namespace lastrivet {

/// A record that breaks an invariant, and how.
struct Violation {
    RecordRef record;
    Message message;

    friend bool operator==(const Violation &, const Violation &) = default;
};

/// Everything that is wrong with the touched records, or with others because of them.
///
/// `touched` may name records that are gone. The one place for entry, import and verification.
std::vector<Violation> violations(const Records &records, const Profile &profile,
                                  std::span<const RecordRef> touched);

/// The same, where it is known what the records were before: the order of steps and what closings
/// enclose, which take a walk over all of them, are not looked at when nothing of it was touched.
/// For many changes in a row.
std::vector<Violation> violations(const Records &records, const Profile &profile,
                                  std::span<const RecordRef> touched, const Records &before);

/// Everything that is wrong with the whole project.
std::vector<Violation> violations(const Records &records, const Profile &profile);

} // namespace lastrivet
