// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/QtText.h"

#include "core/base/Tongue.h"
#include "core/base/VisibleText.h"
#include "core/entry/ClockText.h"
#include "core/entry/DayText.h"
#include "core/profiles/Citation.h"

#include <QCoreApplication>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>

namespace lastrivet::ui {

namespace {

constexpr int daysBeforeEpoch = 2440588; // Julian day number of 1970-01-01

/// Sentences of the core; names of fields and words of vocabularies are arguments of some.
QString translatedPattern(std::string_view pattern)
{
    const QByteArray source(pattern.data(), qsizetype(pattern.size()));
    const QString english = QString::fromUtf8(source);
    for (const char *context : {"Message", "FieldName", "Word"}) {
        QString words = QCoreApplication::translate(context, source.constData());
        if (words != english)
            return words;
    }
    // The name of a field; sentences have blanks.
    const bool isName = english.contains(QLatin1Char('_')) && !english.contains(QLatin1Char(' '));
    return isName ? QString(english).replace(QLatin1Char('_'), QLatin1Char(' ')) : english;
}

/// The locale's long form without its weekday and with the month's short name: "Jun 2, 2026".
/// Figures alone are the second of June to one reader and the sixth of February to another.
QString dayFormat(const QLocale &locale)
{
    // A field, or what stands between two; words in quotes ("d 'de' MMMM") hold no fields.
    static const QRegularExpression piece(QStringLiteral("(d+|M+|y+)|(?:'[^']*'|[^'dMy])+"));
    static const QRegularExpression openEnd(QStringLiteral("[\\s,،、-]+$"));
    QString format;
    bool isAfterWeekday = false;
    auto pieces = piece.globalMatch(locale.dateFormat(QLocale::LongFormat));
    while (pieces.hasNext()) {
        const auto match = pieces.next();
        const bool isField = match.hasCaptured(1);
        const bool isWeekday = match.captured(1).startsWith(QLatin1String("ddd"));
        if (isWeekday)
            format.remove(openEnd).append(format.isEmpty() ? QString() : QStringLiteral(" "));
        else if (isField || !isAfterWeekday)
            format += match.captured();
        isAfterWeekday = isWeekday;
    }
    return format.trimmed().replace(QLatin1String("MMMM"), QLatin1String("MMM"));
}

/// The locale's short form may have a year of two figures, which is one of this century.
QDate readShortForm(const QLocale &locale, const QString &text)
{
    static const QRegularExpression shortYear(QStringLiteral("(?<!y)yy(?!y)"));
    QString format = locale.dateFormat(QLocale::ShortFormat);
    const QDate day = locale.toDate(text, format);
    if (!format.contains(shortYear))
        return day;
    if (day.isValid())
        return day.year() < 2000 ? day.addYears(100) : day;
    return locale.toDate(text, format.replace(shortYear, QStringLiteral("yyyy")));
}

/// In the order of the short form, without its zeros in front, and with a year of this century in
/// two figures where it has four: "3/4/27".
QDate readFewerFigures(const QLocale &locale, const QString &text)
{
    static const QRegularExpression twoOfDay(QStringLiteral("(?<!d)dd(?!d)"));
    static const QRegularExpression twoOfMonth(QStringLiteral("(?<!M)MM(?!M)"));
    static const QRegularExpression anyYear(QStringLiteral("y+"));
    QString format = locale.dateFormat(QLocale::ShortFormat);
    format.replace(twoOfDay, QStringLiteral("d")).replace(twoOfMonth, QStringLiteral("M"));
    const QString withLongYear = QString(format).replace(anyYear, QStringLiteral("yyyy"));
    constexpr int firstOfFour = 1000;
    if (const QDate day = locale.toDate(text, withLongYear);
        day.isValid() && day.year() >= firstOfFour)
        return day;
    const QDate day = locale.toDate(text, format.replace(anyYear, QStringLiteral("yy")));
    return day.isValid() && day.year() < 2000 ? day.addYears(100) : day;
}

} // namespace

QString toQt(std::string_view text)
{
    return QString::fromStdString(visibleText(text));
}

std::string toStd(const QString &text)
{
    return text.trimmed().toStdString();
}

std::filesystem::path toPath(const QString &file)
{
    return QFile::encodeName(file).toStdString();
}

QString pathText(const std::filesystem::path &file)
{
    return QFile::decodeName(QByteArray::fromStdString(file.string()));
}

QString onButton(QString text)
{
    return text.replace(QLatin1Char('&'), QLatin1String("&&"));
}

QString inWords(const Message &message)
{
    static const Tongue screen{
        [](std::string_view pattern) { return translatedPattern(pattern).toStdString(); },
        [](const std::string &argument) {
            const auto moment = Moment::parse(argument);
            return moment ? dateText(*moment).toStdString() : argument;
        }};
    return toQt(said(message, screen));
}

QString listLine(const std::string &item)
{
    if (item.empty())
        return {};
    return toQt(QCoreApplication::translate("Message", item.c_str()).toStdString());
}

QString sourceWords(const std::string &source)
{
    const QString whole = listLine(source);
    return whole == toQt(source) ? inWords(citationMessage(source)) : whole;
}

QString asSentence(const Message &message)
{
    QString words = inWords(message);
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
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
    return QLocale().toString(toDate(moment), dayFormat(QLocale()));
}

QString dateText(Moment moment)
{
    if (!moment.hasTime())
        return dayText(moment);
    return QCoreApplication::translate("Moment", "%1, %2").arg(dayText(moment), timeText(moment));
}

QString timeText(Moment moment)
{
    const QTime time(moment.minuteOfDay() / 60, moment.minuteOfDay() % 60);
    return time.toString(QStringLiteral("HH:mm"));
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
    const QString typed = text.trimmed();
    if (const QDate day = readShortForm(locale, typed); day.isValid())
        return toMoment(day);
    if (const QDate day = readFewerFigures(locale, typed); day.isValid())
        return toMoment(day);
    for (const QString &format : {dayFormat(locale), locale.dateFormat(QLocale::LongFormat)}) {
        if (const QDate day = locale.toDate(typed, format); day.isValid())
            return toMoment(day);
    }
    return std::nullopt;
}

std::optional<Moment> parseMoment(const QString &text)
{
    static const QRegularExpression withTime(
        QStringLiteral(R"(^\s*(.+?)[\s,T]+(\d{1,2}):(\d{2})\s*$)"));
    const auto match = withTime.match(text);
    if (!match.hasMatch())
        return parseDay(text);
    const auto day = parseDay(match.captured(1));
    const int minute = match.captured(2).toInt() * 60 + match.captured(3).toInt();
    if (!day || match.captured(3).toInt() > 59 || minute >= 24 * 60)
        return std::nullopt;
    return Moment::ofTime(day->day(), minute);
}

std::optional<Moment> typedMoment(const QString &text, Moment today)
{
    static const QRegularExpression withTime(
        QStringLiteral(R"(^\s*(.+?)[\s,]+(\S+?)(?:\s+uhr)?\s*$)"),
        QRegularExpression::CaseInsensitiveOption);
    if (const auto known = parseMoment(text))
        return known;
    if (const auto known = entry::parseDayText(toStd(text), today))
        return known;
    const auto match = withTime.match(text);
    if (!match.hasMatch())
        return std::nullopt;
    const QString front = match.captured(1);
    const auto inWordsOfLine = entry::parseDayText(toStd(front), today);
    const auto day = inWordsOfLine ? inWordsOfLine : parseDay(front);
    const auto minute = entry::parseClock(toStd(match.captured(2).toLower()));
    if (!day || day->hasTime() || !minute)
        return std::nullopt;
    return Moment::ofTime(day->day(), *minute);
}

QString withColon(const QString &name, const QString &what)
{
    return QCoreApplication::translate("Told", "%1: %2").arg(name, what);
}

QString hoursText(Minutes minutes)
{
    const auto count = minutes.count();
    return QCoreApplication::translate("Minutes", "%1 h %2")
        .arg(QLocale().toString(qlonglong(count / 60)))
        .arg(qlonglong(count % 60), 2, 10, QLatin1Char('0'));
}

} // namespace lastrivet::ui
