// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Money.h"
#include "core/records/Description.h"

#include <QString>

#include <cstdint>
#include <string>
#include <vector>

namespace lastrivet::ui {

/// The amount as the locale parts its figures, without its currency: "1,234.50". Exact.
QString figureText(const Money &money);
/// With its currency behind it: "1,234.50 CAD".
QString moneyText(const Money &money);
/// Several amounts, each in its currency; "0" for none.
QString moneyText(const std::vector<Money> &amounts);
/// Says which of what was taken in are no currencies in force; empty for none.
QString unknownCurrencyText(const std::vector<std::string> &currencies);

/// True for a field that holds minor units of the record's currency.
bool isMoney(const Field &field);
/// The currency of a record with such a field.
std::string &currencyOf(const Field &field, void *record);
const std::string &currencyOf(const Field &field, const void *record);

/// True for a field that holds the code of a currency.
bool isCurrencyField(const Field &field);
/// The minor units of a record that are of the currency in this field; null when there are none.
std::int64_t *amountOf(const Field &currency, void *record);

} // namespace lastrivet::ui
