// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/PersonalSettings.h"

#include <QCryptographicHash>
#include <QLocale>

namespace lastrivet::ui {

namespace {

const auto languageKey = QStringLiteral("language");
const auto themeKey = QStringLiteral("theme");
const auto tallKey = QStringLiteral("tall_rows");
const auto paperKey = QStringLiteral("paper");
const auto printLanguageKey = QStringLiteral("print_language");
const auto whoKey = QStringLiteral("who");
const auto watchedKey = QStringLiteral("watched");

/// The key for a folder, hashed because QSettings takes slashes in a path for groups.
QString keyFor(const QString &group, const QString &folder)
{
    const auto hash = QCryptographicHash::hash(folder.toUtf8(), QCryptographicHash::Sha1);
    return group + QLatin1Char('/') + QString::fromLatin1(hash.toHex());
}

print::Paper paperHere()
{
    const auto country = QLocale().territory();
    const bool isLetter = country == QLocale::UnitedStates || country == QLocale::Canada;
    return isLetter ? print::Paper::Letter : print::Paper::A4;
}

} // namespace

PersonalSettings::PersonalSettings(QSettings &settings)
    : m_settings(settings)
{
}

void PersonalSettings::set(const QString &key, const QString &value)
{
    if (value.isEmpty())
        m_settings.remove(key);
    else
        m_settings.setValue(key, value);
}

QString PersonalSettings::language() const
{
    return m_settings.value(languageKey).toString();
}

void PersonalSettings::setLanguage(const QString &code)
{
    set(languageKey, code);
}

Theme::Choice PersonalSettings::theme() const
{
    const int kept = m_settings.value(themeKey).toInt();
    return kept == int(Theme::Choice::Light) || kept == int(Theme::Choice::Dark)
               ? Theme::Choice(kept)
               : Theme::Choice::System;
}

void PersonalSettings::setTheme(Theme::Choice choice)
{
    m_settings.setValue(themeKey, int(choice));
}

bool PersonalSettings::hasTallRows() const
{
    return m_settings.value(tallKey).toBool();
}

void PersonalSettings::setTallRows(bool areTall)
{
    m_settings.setValue(tallKey, areTall);
}

print::Paper PersonalSettings::paper() const
{
    const QString kept = m_settings.value(paperKey).toString();
    if (kept == QStringLiteral("A4"))
        return print::Paper::A4;
    return kept == QStringLiteral("Letter") ? print::Paper::Letter : paperHere();
}

void PersonalSettings::setPaper(print::Paper paper)
{
    set(paperKey, paper == print::Paper::A4 ? QStringLiteral("A4") : QStringLiteral("Letter"));
}

QString PersonalSettings::printLanguageCode() const
{
    return m_settings.value(printLanguageKey).toString();
}

const print::Language &PersonalSettings::printLanguage() const
{
    const auto *printed = print::languageOfCode(printLanguageCode());
    const auto *shown = print::languageOfCode(language());
    if (printed)
        return *printed;
    return shown ? *shown : print::languageFor(QLocale::system().language());
}

void PersonalSettings::setPrintLanguage(const QString &code)
{
    set(printLanguageKey, code);
}

QString PersonalSettings::who(const QString &folder) const
{
    return m_settings.value(keyFor(whoKey, folder)).toString();
}

void PersonalSettings::setWho(const QString &folder, const QString &name)
{
    set(keyFor(whoKey, folder), name);
}

QString PersonalSettings::watchedFolder(const QString &folder) const
{
    return m_settings.value(keyFor(watchedKey, folder)).toString();
}

void PersonalSettings::setWatchedFolder(const QString &folder, const QString &watched)
{
    set(keyFor(watchedKey, folder), watched);
}

QSettings settingsOfUser()
{
    return QSettings(QSettings::IniFormat, QSettings::UserScope, QStringLiteral("Lastrivet"),
                     QStringLiteral("lastrivet"));
}

} // namespace lastrivet::ui
