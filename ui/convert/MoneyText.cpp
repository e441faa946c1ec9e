// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/MoneyText.h"

#include "core/records/Expense.h"
#include "core/records/PartLine.h"
#include "core/stores/MoneyText.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace lastrivet::ui {

QString figureText(const Money &money)
{
    const QString plain = toQt(stores::figureOf(money));
    const bool isNegative = plain.startsWith(QLatin1Char('-'));
    const QStringList parts = plain.mid(isNegative ? 1 : 0).split(QLatin1Char('.'));
    const QLocale locale;
    QString figure = locale.toString(parts.front().toULongLong());
    if (parts.size() > 1)
        figure += locale.decimalPoint() + parts.back();
    return isNegative ? locale.negativeSign() + figure : figure;
}

QString moneyText(const Money &money)
{
    return money.currency.empty()
               ? figureText(money)
               : QStringLiteral("%1 %2").arg(figureText(money), toQt(money.currency));
}

QString moneyText(const std::vector<Money> &amounts)
{
    QStringList words;
    for (const Money &amount : amounts)
        words << moneyText(amount);
    return words.isEmpty() ? QStringLiteral("0") : words.join(QStringLiteral(" + "));
}

QString unknownCurrencyText(const std::vector<std::string> &currencies)
{
    if (currencies.empty())
        return {};
    QStringList names;
    for (const std::string &currency : currencies)
        names << toQt(currency);
    return QCoreApplication::translate(
               "Money", "No currency in force by ISO 4217: %1; the amounts are kept as they are.")
        .arg(names.join(QStringLiteral(", ")));
}

bool isMoney(const Field &field)
{
    return field.name == "unit_price" || field.name == "amount";
}

std::string &currencyOf(const Field &field, void *record)
{
    return field.name == "unit_price" ? static_cast<PartLine *>(record)->currency
                                      : static_cast<Expense *>(record)->currency;
}

const std::string &currencyOf(const Field &field, const void *record)
{
    return field.name == "unit_price" ? static_cast<const PartLine *>(record)->currency
                                      : static_cast<const Expense *>(record)->currency;
}

bool isCurrencyField(const Field &field)
{
    return field.name == "currency";
}

std::int64_t *amountOf(const Field &currency, void *record)
{
    const auto isOf = [&](RecordType type) { return describe(type).find("currency") == &currency; };
    if (isOf(RecordType::Expense))
        return &static_cast<Expense *>(record)->amount;
    if (!isOf(RecordType::PartLine))
        return nullptr;
    auto &price = static_cast<PartLine *>(record)->unit_price;
    return price ? &*price : nullptr;
}

} // namespace lastrivet::ui
