// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/Credit.h"
#include "core/credit/Tenths.h"

namespace lastrivet::credit {

/// Work of one task that somebody might be paid for, asked about before it is done: tenths that
/// would leave the builder's columns.
struct PaidHelp {
    std::int64_t assembly = 0;
    std::int64_t fabrication = 0;
};

/// The tenths of the task with that help; never more than the builder has in a column.
Tenths withHelp(const CreditTask &task, const PaidHelp &help);
/// The whole account as it would be: `account` as it is, with that help for one of its tasks.
Account ifPaid(Account account, const CreditTask &task, const PaidHelp &help);

/// How many tenths could still go to paid help and the builder's share stay above one half,
/// exactly; nothing while it is not above.
std::optional<std::int64_t> tenthsToSpare(const Account &account);

} // namespace lastrivet::credit
