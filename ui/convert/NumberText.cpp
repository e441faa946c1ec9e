// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/NumberText.h"

#include "core/workshop/Quantities.h"
#include "ui/convert/QtText.h"

#include <QLocale>

namespace lastrivet::ui {

namespace {

/// A comma or a point in it never parts thousands, so that what is shown can be typed again.
QLocale withoutGroups()
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

} // namespace

QString numberText(double value, int figures)
{
    const char form = figures == QLocale::FloatingPointShortest ? 'f' : 'g';
    return withoutGroups().toString(value, form, figures);
}

QString plainNumber(double value, int decimals)
{
    const QLocale locale = withoutGroups();
    QString text = locale.toString(value, 'f', decimals);
    const QString point = locale.decimalPoint();
    if (!text.contains(point))
        return text;
    while (text.endsWith(QLatin1Char('0')))
        text.chop(1);
    if (text.endsWith(point))
        text.chop(point.size());
    return text;
}

std::string withPoint(const QString &typed)
{
    QString plain = typed;
    if (QLocale().decimalPoint() == QLatin1String(",") && plain.count(QLatin1Char(',')) == 1 &&
        !plain.contains(QLatin1Char('.')))
        plain.replace(QLatin1Char(','), QLatin1Char('.'));
    return toStd(plain);
}

Result<double, Message> readNumber(const QString &text)
{
    return workshop::inTableUnits(withPoint(text), workshop::Quantity::Number, UnitSystem::Metric);
}

} // namespace lastrivet::ui
