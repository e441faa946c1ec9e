// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/exchange/csv/CsvColumns.h"
#include "core/exchange/csv/CsvTable.h"

#include <optional>
#include <string_view>

namespace lastrivet::exchange {

/// Rewrites prices as people write them ("12.50", "€ 1.250,00") to minor units, and says their
/// currency in its column, which is added where there is none; `usual` is that of prices that name
/// none. Whether "1,234" is a thousand its column tells, and where no price there does, the sign
/// `own` that the person has before decimals; where that is unknown, it is no price. A column
/// headed `unit_price` or `amount` is as this program writes it, and stays. What is no price stays
/// as it is, so that it is refused as it was written, and the table says why; a whole number
/// without currency gets a question mark for that purpose. Answers what is to be told: that prices
/// took the usual currency beside others that name another.
std::optional<Message> rewritePrices(CsvTable &table, CsvColumns &columns, std::string_view usual,
                                     DecimalSign own = DecimalSign::Unknown);

} // namespace lastrivet::exchange
