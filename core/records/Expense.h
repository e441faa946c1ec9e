// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Media;

/// Money spent.
struct Expense {
    static constexpr RecordType type = RecordType::Expense;

    Id<Expense> id;
    std::optional<Moment> spent_on;
    std::string what;
    std::string supplier;
    /// In minor units of the currency (cents).
    std::int64_t amount = 0;
    /// An ISO 4217 code.
    std::string currency;
    std::string category;
    /// The receipt.
    Id<Media> media_id;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const Expense &, const Expense &) = default;
};

} // namespace lastrivet
