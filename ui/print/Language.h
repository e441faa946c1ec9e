// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Wording.h"

#include <QLocale>
#include <QString>

#include <span>

namespace lastrivet::print {

/// A language that screen and print can speak.
struct Language {
    QLocale::Language id;
    /// As ISO 639-1 writes it, in settings and on the command line: "de".
    QString code;
    /// In the language itself.
    QString name;
};

/// Every language there is, English first.
std::span<const Language> languages();
/// English when there is no such language.
const Language &languageFor(QLocale::Language id);
/// Null when there is no language of that code.
const Language *languageOfCode(const QString &code);

/// How a document is worded in a language, whatever the screen speaks; dates and numbers are those
/// of the language where most people speak it, whatever the country of the system.
Wording wordingIn(const Language &language);

} // namespace lastrivet::print
