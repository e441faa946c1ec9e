// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Money.h"
#include "core/base/Result.h"

#include <string>
#include <string_view>

namespace lastrivet::stores {

/// How many decimals a currency's minor unit gives it (ISO 4217): two of most, none of yen.
int decimalsOf(std::string_view currency);

/// The amount without its currency, with a full stop: "1234.50", "-3.05", of yen "1200". Exact.
std::string figureOf(const Money &money);

/// Reads an amount as people write it: "1,234.50", "1.234,5 EUR", "EUR 12", "12". A single stop or
/// comma before exactly three figures parts thousands, unless the currency has three decimals.
/// `usual` is the currency of amounts that name none. Says in one sentence what is wrong: no
/// amount, below zero, more decimals than there are, no currency, too large to be kept.
Result<Money, Message> readMoney(std::string_view text, std::string_view usual);

} // namespace lastrivet::stores
