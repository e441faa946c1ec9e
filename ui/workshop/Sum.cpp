// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/workshop/Sum.h"

#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

using workshop::Quantity;

QString tr(const char *text)
{
    return QCoreApplication::translate("Workshop", text);
}

int decimalsOf(Quantity quantity, UnitSystem units)
{
    const bool isMetric = units == UnitSystem::Metric;
    switch (quantity) {
    case Quantity::Length:
        return isMetric ? 2 : 4;
    case Quantity::Torque:
        return isMetric ? 2 : 1;
    case Quantity::Force:
        return isMetric ? 0 : 1;
    default:
        return 4;
    }
}

QString numberText(double value, Quantity quantity, UnitSystem units)
{
    return plainNumber(workshop::inUnits(value, quantity, units), decimalsOf(quantity, units));
}

/// A number and its unit stay on one line.
QString withUnit(const QString &number, Quantity quantity, UnitSystem units)
{
    const QString sign = toQt(workshop::unitSign(quantity, units));
    return sign.isEmpty() ? number : number + QChar(QChar::Nbsp) + sign;
}

} // namespace

QString figureText(double value, Quantity quantity, UnitSystem units)
{
    return withUnit(numberText(value, quantity, units), quantity, units);
}

QString spanText(std::optional<double> least, std::optional<double> most, Quantity quantity,
                 UnitSystem units)
{
    if (least && most)
        return withUnit(tr("%1 – %2").arg(numberText(*least, quantity, units),
                                          numberText(*most, quantity, units)),
                        quantity, units);
    if (least)
        return tr("at least %1").arg(figureText(*least, quantity, units));
    return most ? tr("at most %1").arg(figureText(*most, quantity, units)) : QString();
}

QString ownText(const workshop::OwnLimit &limit)
{
    const QString span =
        spanText(limit.minimum, limit.maximum, Quantity::Number, UnitSystem::Imperial);
    return limit.unit.empty() ? span : span + QChar(QChar::Nbsp) + toQt(limit.unit);
}

} // namespace lastrivet::ui
