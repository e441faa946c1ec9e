// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/NumberText.h"

#include "core/workshop/Quantities.h"
#include "ui/convert/QtText.h"

#include <QLocale>
#include <QRegularExpression>

namespace lastrivet::ui {

namespace {

/// Without separators of thousands, so that what is shown can be typed again.
QLocale withoutGroups()
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale;
}

/// Matches "1.250", typed where the decimal sign is a comma: a thousand and more as that language
/// writes it, a little more than one as tables do. Not with inches, which drawings write with a
/// point.
QRegularExpressionMatch mayBeThousand(const QString &typed)
{
    static const QRegularExpression form(QStringLiteral(
        "^\\s*([-+\\x{2212}]?[1-9]\\d{0,2})\\.(\\d{3})(?!\\d)(?!\\s*(?:in|\")\\s*$)([^.,]*)$"));
    return form.match(typed);
}

/// Matches "1.432,5": with a comma for its decimals, points can only part thousands.
QRegularExpressionMatch hasBothSigns(const QString &typed)
{
    static const QRegularExpression form(
        QStringLiteral("^(\\s*[-+\\x{2212}]?[1-9]\\d{0,2}(?:\\.\\d{3})+),(\\d+)([^.,]*)$"));
    return form.match(typed);
}

bool hasDecimalComma()
{
    return decimalSign() == DecimalSign::Comma;
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

QString countText(std::int64_t count)
{
    return QLocale().toString(qlonglong(count));
}

DecimalSign decimalSign()
{
    const QString sign = QLocale().decimalPoint();
    if (sign == QLatin1String(","))
        return DecimalSign::Comma;
    return sign == QLatin1String(".") ? DecimalSign::Point : DecimalSign::Unknown;
}

Result<std::string, BothReadings> withPoint(const QString &typed)
{
    if (!hasDecimalComma())
        return toStd(typed);
    if (const auto match = mayBeThousand(typed); match.hasMatch()) {
        const QString rest = match.captured(2) + match.captured(3);
        return BothReadings{toStd(typed), toStd(match.captured(1) + rest),
                            toStd(match.captured(1) + QLatin1Char(',') + rest)};
    }
    if (const auto match = hasBothSigns(typed); match.hasMatch())
        return toStd(match.captured(1).remove(QLatin1Char('.')) + QLatin1Char('.') +
                     match.captured(2) + match.captured(3));
    QString plain = typed;
    if (plain.count(QLatin1Char(',')) == 1 && !plain.contains(QLatin1Char('.')))
        plain.replace(QLatin1Char(','), QLatin1Char('.'));
    return toStd(plain);
}

Message askWhich(const BothReadings &both)
{
    return {"“{0}” may be {1} or {2}; write {1} when that is meant.",
            {both.typed, both.thousand, both.decimals}};
}

std::optional<BothReadings> twoReadings(const QString &words)
{
    static const QRegularExpression form(
        QStringLiteral("(?<![\\d.,])([1-9]\\d{0,2})\\.(\\d{3})(?![\\d.,])"));
    const auto match = hasDecimalComma() ? form.match(words) : QRegularExpressionMatch();
    if (!match.hasMatch())
        return std::nullopt;
    const QString first = match.captured(1);
    const QString rest = match.captured(2);
    return BothReadings{toStd(match.captured(0)), toStd(first + rest),
                        toStd(first + QLatin1Char(',') + rest)};
}

Result<double, Message> readNumber(const QString &text)
{
    return readTyped(workshop::inTableUnits, text, workshop::Quantity::Number, UnitSystem::Metric);
}

} // namespace lastrivet::ui
