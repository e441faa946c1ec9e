// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/FieldText.h"

#include "core/readiness/Names.h"
#include "ui/convert/MoneyText.h"
#include "ui/convert/NumberText.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QLocale>

namespace lastrivet::ui {

namespace {

constexpr const char *titles[recordTypeCount] = {
    QT_TRANSLATE_NOOP("Records", "Project"),
    QT_TRANSLATE_NOOP("Records", "People"),
    QT_TRANSLATE_NOOP("Records", "Parts"),
    QT_TRANSLATE_NOOP("Records", "Steps"),
    QT_TRANSLATE_NOOP("Records", "Work sessions"),
    QT_TRANSLATE_NOOP("Records", "Closings"),
    QT_TRANSLATE_NOOP("Records", "Hold points"),
    QT_TRANSLATE_NOOP("Records", "Checks"),
    QT_TRANSLATE_NOOP("Records", "Inspections"),
    QT_TRANSLATE_NOOP("Records", "Sign-offs"),
    QT_TRANSLATE_NOOP("Records", "Squawks"),
    QT_TRANSLATE_NOOP("Records", "Deviations"),
    QT_TRANSLATE_NOOP("Records", "Bulletins"),
    QT_TRANSLATE_NOOP("Records", "Fasteners"),
    QT_TRANSLATE_NOOP("Records", "Measurements"),
    QT_TRANSLATE_NOOP("Records", "Tools"),
    QT_TRANSLATE_NOOP("Records", "Packing lists"),
    QT_TRANSLATE_NOOP("Records", "Material lots"),
    QT_TRANSLATE_NOOP("Records", "Material used"),
    QT_TRANSLATE_NOOP("Records", "Photos and documents"),
    QT_TRANSLATE_NOOP("Records", "Expenses"),
    QT_TRANSLATE_NOOP("Records", "Major-portion tasks"),
    QT_TRANSLATE_NOOP("Records", "Equipment"),
    QT_TRANSLATE_NOOP("Records", "Weighings"),
    QT_TRANSLATE_NOOP("Records", "Loading cases"),
    QT_TRANSLATE_NOOP("Records", "Envelopes"),
    QT_TRANSLATE_NOOP("Records", "Documents"),
    QT_TRANSLATE_NOOP("Records", "Flights"),
};

struct PlainTitle {
    QLatin1String name;
    QLatin1String title;
};

/// For fields whose names say little in English; other languages have words for all of them.
constexpr PlainTitle plainTitles[]{
    {QLatin1String("accepted_basis"), QLatin1String("accepted on what basis")},
    {QLatin1String("accepted_on"), QLatin1String("accepted on")},
    {QLatin1String("cure_minutes"), QLatin1String("cure time")},
    {QLatin1String("estimate_minutes"), QLatin1String("estimate")},
    {QLatin1String("plan_ref"), QLatin1String("place in the plans")},
    {QLatin1String("sample_on"), QLatin1String("day of the sample")},
};

/// Empty for a field that has none.
QString plainTitle(const QString &name)
{
    for (const PlainTitle &known : plainTitles) {
        if (name == known.name)
            return known.title;
    }
    return {};
}

/// "component_id" and "found_on" are known to people by what they point at or tell.
QString withoutSuffix(QString name)
{
    for (const auto suffix : {QLatin1String("_id"), QLatin1String("_on")}) {
        if (name.endsWith(suffix))
            name.chop(suffix.size());
    }
    return name;
}

struct InText {
    const Records &records;
    const Field &field;

    QString operator()(std::monostate) const { return {}; }
    QString operator()(bool value) const
    {
        return value ? QCoreApplication::translate("Field", "yes")
                     : QCoreApplication::translate("Field", "no");
    }
    QString operator()(std::int64_t value) const
    {
        if (field.type == FieldType::Ref && field.target)
            return inWords(readiness::named(records, {*field.target, value}));
        if (field.name.ends_with("minutes"))
            return hoursText(Minutes{value});
        return QLocale().toString(qlonglong(value));
    }
    QString operator()(double value) const
    {
        return numberText(value, QLocale::FloatingPointShortest);
    }
    QString operator()(std::string_view value) const
    {
        return field.type == FieldType::Enum ? plainWord(value) : toQt(value);
    }
    QString operator()(Moment value) const { return dateText(value); }
};

} // namespace

QString plainWord(std::string_view word)
{
    const QByteArray key(word.data(), qsizetype(word.size()));
    return QCoreApplication::translate("Word", key.constData())
        .replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString fieldWords(const Field &field)
{
    const QByteArray key(field.name.data(), qsizetype(field.name.size()));
    const QString words = QCoreApplication::translate("FieldName", key.constData());
    if (words != toQt(field.name))
        return words;
    if (field.target == RecordType::Component)
        return QCoreApplication::translate("Field", "part");
    if (const QString plain = plainTitle(words); !plain.isEmpty())
        return plain;
    return withoutSuffix(words).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString fieldTitle(const Field &field)
{
    QString title = fieldWords(field);
    title[0] = title[0].toUpper();
    return title;
}

QString recordsTitle(RecordType type)
{
    return QCoreApplication::translate("Records", titles[std::size_t(type)]);
}

bool isNumber(const Field &field)
{
    return field.type == FieldType::Int || field.type == FieldType::Real;
}

QString fieldText(const Records &records, const Field &field, const void *record)
{
    if (isMoney(field)) {
        const auto value = field.value(record);
        const auto *minor = std::get_if<std::int64_t>(&value);
        return minor ? figureText({*minor, currencyOf(field, record)}) : QString();
    }
    return std::visit(InText{records, field}, field.value(record));
}

} // namespace lastrivet::ui
