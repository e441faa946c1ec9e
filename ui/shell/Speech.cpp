// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/Speech.h"

#include "ui/print/Language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

namespace lastrivet::ui {

namespace {

/// The language, in the country of the system where it is spoken there.
QLocale localeOf(const print::Language &language)
{
    const QLocale system = QLocale::system();
    return system.language() == language.id ? system : QLocale(language.id, system.territory());
}

} // namespace

Speech::~Speech() = default;

void Speech::speak(const QString &code)
{
    m_translators.clear();
    const print::Language *chosen = print::languageOfCode(code);
    const print::Language &language =
        chosen ? *chosen : print::languageFor(QLocale::system().language());
    // Without a choice, days and numbers stay the system's, even where there are no texts in its
    // language.
    QLocale::setDefault(chosen ? localeOf(language) : QLocale::system());
    install(QStringLiteral("qtbase_") + language.code,
            QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    install(QStringLiteral("lastrivet_") + language.code, QStringLiteral(":/translations"));
}

void Speech::install(const QString &file, const QString &folder)
{
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(file, folder))
        return;
    QCoreApplication::installTranslator(translator.get());
    m_translators.push_back(std::move(translator));
}

} // namespace lastrivet::ui
