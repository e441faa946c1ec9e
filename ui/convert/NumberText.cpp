// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/NumberText.h"

#include "core/workshop/Quantities.h"
#include "ui/convert/QtText.h"

#include <QLocale>

namespace lastrivet::ui {

QString numberText(double value, int figures)
{
    QLocale plain;
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    return plain.toString(value, 'g', figures);
}

Result<double, Message> readNumber(const QString &text)
{
    QString plain = text.trimmed();
    // Where the comma is the sign for decimals it is never a thousand: "1,125" was shown like this.
    if (QLocale().decimalPoint() == QLatin1String(",") && plain.count(QLatin1Char(',')) == 1 &&
        !plain.contains(QLatin1Char('.')))
        plain.replace(QLatin1Char(','), QLatin1Char('.'));
    return workshop::inTableUnits(toStd(plain), workshop::Quantity::Number, UnitSystem::Metric);
}

} // namespace lastrivet::ui
