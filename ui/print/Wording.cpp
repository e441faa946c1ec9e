// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Wording.h"

#include <QDate>
#include <QTime>

#include <cmath>

namespace lastrivet::print {

namespace {

/// German counts its days with a point; French counts the first of a month alone.
QString behindDay(QLocale::Language language, int day)
{
    if (language == QLocale::German)
        return QStringLiteral(".");
    return language == QLocale::French && day == 1 ? QStringLiteral("er") : QString();
}

} // namespace

Wording::Wording(QLocale locale, Translate translate)
    : m_locale(std::move(locale))
    , m_translate(std::move(translate))
{
}

QString Wording::text(const Message &message) const
{
    return text(message.pattern, message.arguments);
}

Tongue Wording::tongue() const
{
    return {[this](std::string_view english) {
                const QString own = m_translate ? m_translate(english) : QString();
                return own.isEmpty() ? std::string(english) : own.toStdString();
            },
            [this](const std::string &argument) {
                const std::optional<Moment> moment = Moment::parse(argument);
                return moment ? date(*moment).toStdString() : argument;
            }};
}

QString Wording::text(std::string_view pattern, const std::vector<std::string> &arguments) const
{
    return asIs(said({pattern, arguments}, tongue()));
}

QString Wording::date(Moment moment) const
{
    if (m_dates)
        return m_dates(moment);
    const QDate day = QDate(1970, 1, 1).addDays(moment.day().time_since_epoch().count());
    QString month = m_locale.toString(day, QStringLiteral("MMM"));
    // With a dot in front of a year it reads as the end of a sentence.
    month.remove(QLatin1Char('.'));
    QString text = QStringLiteral("%1%2 %3 %4")
                       .arg(day.day())
                       .arg(behindDay(m_locale.language(), day.day()), month)
                       .arg(day.year());
    if (moment.hasTime()) {
        const QTime time(moment.minuteOfDay() / 60, moment.minuteOfDay() % 60);
        text += QLatin1Char(' ') + time.toString(QStringLiteral("HH:mm"));
    }
    return text;
}

QString Wording::date(const std::optional<Moment> &moment, bool isApproximate) const
{
    if (!moment)
        return {};
    return isApproximate ? text("about {0}", {moment->text()}) : date(*moment);
}

QString Wording::day(const std::optional<Moment> &moment, bool isApproximate) const
{
    return moment ? date(std::optional(moment->dayOnly()), isApproximate) : QString();
}

QString Wording::number(double value) const
{
    QLocale plain = m_locale;
    plain.setNumberOptions(QLocale::OmitGroupSeparator);
    // In the shorter of both forms a gap of 0.0005 would be "5e-04".
    return plain.toString(value, 'f', QLocale::FloatingPointShortest);
}

QString Wording::number(std::int64_t value) const
{
    return m_locale.toString(qlonglong(value));
}

std::string Wording::count(std::size_t value) const
{
    return number(std::int64_t(value)).toStdString();
}

QString Wording::hours(Minutes minutes) const
{
    const std::int64_t count = minutes.count();
    return QStringLiteral("%1 h %2")
        .arg(number(count / 60))
        .arg(count % 60, 2, 10, QLatin1Char('0'));
}

QString Wording::span(Minutes minutes) const
{
    constexpr std::int64_t inADay = 24 * 60;
    const std::int64_t days = minutes.count() / inADay;
    const Minutes rest{minutes.count() % inADay};
    if (days < 2)
        return hours(minutes);
    if (rest.count() == 0)
        return text("{0} d", {std::to_string(days)});
    if (rest.count() % 60 == 0)
        return text("{0} d {1} h", {std::to_string(days), std::to_string(rest.count() / 60)});
    return text("{0} d {1}", {std::to_string(days), hours(rest).toStdString()});
}

QString Wording::sentence(const Message &message) const
{
    QString said = text(message);
    if (!said.isEmpty())
        said[0] = said[0].toUpper();
    return said;
}

QString Wording::listed(const QStringList &pieces) const
{
    const bool hasGap = m_locale.language() == QLocale::French;
    return pieces.join(hasGap ? QStringLiteral("\u00a0; ") : QStringLiteral("; "));
}

} // namespace lastrivet::print
