// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::credit {

/// A tick for each task, to the one who did more of it; half a tick to each when they did the same.
struct TwoColumns {
    std::int64_t builder_half_ticks = 0;
    std::int64_t maker_half_ticks = 0;

    bool passes() const { return builder_half_ticks > maker_half_ticks; }
    friend bool operator==(const TwoColumns &, const TwoColumns &) = default;
};

/// The major-portion account: who did how much of the tasks, in tenths of a task.
///
/// It is a sum over what the builder entered; the authority decides.
struct Account {
    std::string profile;
    CreditBasis basis = CreditBasis::Tenths;
    std::int64_t rows = 0;
    std::int64_t applicable_rows = 0;
    std::int64_t kit_tenths = 0;
    std::int64_t commercial_tenths = 0;
    std::int64_t assembly_tenths = 0;
    std::int64_t fabrication_tenths = 0;
    /// Only where the profile counts ticks.
    std::optional<TwoColumns> two_columns;
    /// Applicable tasks with work of the builder that no picture shows, by id.
    std::vector<Id<CreditTask>> evidence_gaps;

    std::int64_t builderTenths() const { return assembly_tenths + fabrication_tenths; }
    std::int64_t allTenths() const { return kit_tenths + commercial_tenths + builderTenths(); }
    /// The builder's share in hundredths of a per cent, rounded down; empty when no task applies.
    std::optional<std::int64_t> shareHundredths() const;
    /// The same as `51.25`.
    std::optional<std::string> shareText() const;
    /// More than half, exactly.
    bool sharePasses() const { return 2 * builderTenths() > allTenths(); }
    /// The verdict by the profile's basis.
    bool passes() const { return two_columns ? two_columns->passes() : sharePasses(); }

    friend bool operator==(const Account &, const Account &) = default;
};

/// Sums all live credit tasks.
Account account(const Records &records, const Profile &profile);

} // namespace lastrivet::credit
