// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Expense.h"

#include <string_view>

namespace lastrivet::stores {

/// An expense in one line: the amount, a currency where it is not the usual one, a category before
/// a colon, and what was bought: `34.90 hardware: bolts and nuts`, `120 USD taps`, `1 234,56 €
/// tôle`. Without a day. `sign` is what the person has before decimals.
Result<Expense, Message> readExpenseLine(std::string_view line, std::string_view usualCurrency,
                                         DecimalSign sign = DecimalSign::Unknown);

} // namespace lastrivet::stores
