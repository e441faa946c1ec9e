// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/ExpiryText.h"

#include "core/entry/DayText.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>

namespace lastrivet::ui {

bool isExpiryOfLot(const Field &field)
{
    return &field == describe(RecordType::MaterialLot).find("expires_on");
}

std::optional<Moment> typedExpiry(const QString &text, Moment today)
{
    const std::string typed = toStd(text);
    if (const auto end = entry::parseMonthEnd(typed))
        return end;
    return entry::lacksYear(typed) ? std::nullopt : typedMoment(text, today);
}

QString whyNoExpiry(const QString &text, Moment today)
{
    const QString day = toQt(today.text());
    if (entry::lacksYear(toStd(text)))
        return QCoreApplication::translate(
                   "Expiry", "“%1” does not say for certain which year is meant; write a day as "
                             "%2, or a month as 03/2027.")
            .arg(text, day);
    return QCoreApplication::translate(
               "Expiry", "“%1” is no day; write it as %2, or a month as 03/2027, which is read as "
                         "its last day.")
        .arg(text, day);
}

} // namespace lastrivet::ui
