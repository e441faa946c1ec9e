// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/journal/JournalFilter.h"

#include "ui/convert/QtText.h"
#include "ui/journal/ScreenWording.h"
#include "ui/print/JournalWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace lastrivet::ui {

namespace {

/// Shorter ones are words as likely: "added", "face".
constexpr qsizetype leastHashDigits = 6;

QString tr(const char *text)
{
    return QCoreApplication::translate("JournalFilter", text);
}

bool isHashLike(const QString &text)
{
    const auto isDigit = [](QChar each) {
        return (each >= QLatin1Char('0') && each <= QLatin1Char('9')) ||
               (each >= QLatin1Char('a') && each <= QLatin1Char('f'));
    };
    return text.size() >= leastHashDigits && std::all_of(text.begin(), text.end(), isDigit);
}

/// As it is typed from a paper: in groups, in capitals, or with the dots of a shortened one.
bool isHashOf(const JournalEntry &entry, QString text)
{
    text = text.toLower().remove(QLatin1Char(' ')).remove(QStringLiteral("…"));
    if (!isHashLike(text))
        return false;
    const std::string start = text.toStdString();
    return entry.hash.starts_with(start) || entry.origin_hash.starts_with(start);
}

bool holdsAll(const JournalEntry &entry, const QString &words)
{
    const QString text = toQt(entry.label) + QLatin1Char(' ') + toQt(entry.who);
    const QStringList list = words.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(list.begin(), list.end(), [&](const QString &word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

} // namespace

bool JournalFilter::isAny() const
{
    return *this != JournalFilter{};
}

bool JournalFilter::matches(const JournalEntry &entry, Moment day) const
{
    if (kind && entry.kind != *kind)
        return false;
    if (!who.isEmpty() && toQt(entry.who) != who)
        return false;
    if ((from && day.day() < from->day()) || (until && day.day() > until->day()))
        return false;
    return words.isEmpty() || holdsAll(entry, words) || isHashOf(entry, words);
}

QString kindTitle(ChangeKind kind)
{
    return kind == ChangeKind::Change ? tr("changes") : print::kindIn(screenWording(), kind);
}

} // namespace lastrivet::ui
