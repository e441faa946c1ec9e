// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QLocale>

namespace lastrivet::ui {

namespace {

constexpr int daysBeforeEpoch = 2440588; // Julian day number of 1970-01-01

} // namespace

QString toQt(std::string_view text)
{
    return QString::fromUtf8(text.data(), qsizetype(text.size()));
}

std::string toStd(const QString &text)
{
    return text.trimmed().toStdString();
}

QString inWords(const Message &message)
{
    const std::string pattern(message.pattern);
    const QString translated = QCoreApplication::translate("Message", pattern.c_str());
    return toQt(filled(translated.toStdString(), message.arguments));
}

QDate toDate(Moment moment)
{
    return QDate::fromJulianDay(daysBeforeEpoch + moment.day().time_since_epoch().count());
}

std::optional<Moment> toMoment(QDate day)
{
    if (!day.isValid())
        return std::nullopt;
    const auto days = std::chrono::days{day.toJulianDay() - daysBeforeEpoch};
    return Moment::ofDay(std::chrono::sys_days{days});
}

std::optional<Moment> toMoment(QDateTime when)
{
    const auto day = toMoment(when.date());
    if (!day)
        return std::nullopt;
    return Moment::ofTime(day->day(), when.time().hour() * 60 + when.time().minute());
}

QString dayText(Moment moment)
{
    return QLocale().toString(toDate(moment), QLocale::ShortFormat);
}

QString dateText(Moment moment)
{
    if (!moment.hasTime())
        return dayText(moment);
    const QTime time(moment.minuteOfDay() / 60, moment.minuteOfDay() % 60);
    return QCoreApplication::translate("Moment", "%1, %2")
        .arg(dayText(moment), time.toString(QStringLiteral("HH:mm")));
}

QString dateText(const std::optional<Moment> &moment)
{
    return moment ? dateText(*moment) : QString();
}

std::optional<Moment> parseDay(const QString &text)
{
    if (const auto iso = Moment::parse(toStd(text)))
        return iso;
    const QLocale locale;
    for (const auto format : {QLocale::ShortFormat, QLocale::LongFormat}) {
        if (const auto day = locale.toDate(text.trimmed(), format); day.isValid())
            return toMoment(day);
    }
    return std::nullopt;
}

QString hoursText(Minutes minutes)
{
    const auto count = minutes.count();
    return QCoreApplication::translate("Minutes", "%1 h %2")
        .arg(QLocale().toString(qlonglong(count / 60)))
        .arg(qlonglong(count % 60), 2, 10, QLatin1Char('0'));
}

} // namespace lastrivet::ui
