// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/DecimalSign.h"
#include "core/base/Message.h"
#include "core/base/Money.h"
#include "core/base/Result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lastrivet::stores {

/// How many decimals a currency's minor unit gives it (ISO 4217): two of most, none of yen.
int decimalsOf(std::string_view currency);

/// The amount without its currency, with a full stop: "1234.50", "-3.05", of yen "1200". Exact.
std::string figureOf(const Money &money);

/// The code of a currency as people say it in a line, in letters of any size: "Euro", "chf", "CA$".
/// Of the codes only those are known that are no word of a language. Empty for any other word.
std::string currencySaid(std::string_view word);

/// The code of the currency that stands alone: EUR of "eur", "Euro" and "€"; empty when it is none.
std::string currencyCode(std::string_view text);

/// The minor units of the same amount in a currency with `more` decimals, or fewer of them; empty
/// when it has decimals that would be lost, or is too large.
std::optional<std::int64_t> withDecimals(std::int64_t minorUnits, int more);

/// The length of what stands for no cents at the end of an amount: 2 of "12,-", 3 of "12.--".
std::size_t lengthOfDashes(std::string_view amount);

/// Reads an amount as people write it: "1,234.50", "1.234,5 EUR", "EUR 12", "12 250", "12,- Euro".
///
/// `sign` is what the person has before decimals. In "1,789" it tells whether there are three of
/// them or a thousand; where it is unknown, and the currency has decimals, that is asked, but for
/// the three of "1.789 KWD". `usual` is the currency of amounts that name none. Says in one
/// sentence what is wrong: no amount, below zero, two readings, more decimals than there are, no
/// currency, too large to be kept.
Result<Money, Message> readMoney(std::string_view text, std::string_view usual,
                                 DecimalSign sign = DecimalSign::Unknown);

/// The sign for decimals of whoever wrote this amount: `Comma` for "1.234,5" and "0,95", `Unknown`
/// for "12", "1,234" and for what is no amount.
DecimalSign decimalSignIn(std::string_view text);

} // namespace lastrivet::stores
