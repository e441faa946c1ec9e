// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Language.h"

#include <QTranslator>

#include <algorithm>
#include <array>
#include <memory>

namespace lastrivet::print {

std::span<const Language> languages()
{
    static const std::array<Language, 3> all{
        Language{QLocale::English, QStringLiteral("en"), QStringLiteral("English")},
        Language{QLocale::German, QStringLiteral("de"), QStringLiteral("Deutsch")},
        Language{QLocale::French, QStringLiteral("fr"), QStringLiteral("Français")}};
    return all;
}

const Language &languageFor(QLocale::Language id)
{
    const auto all = languages();
    const auto found = std::ranges::find(all, id, &Language::id);
    return found == all.end() ? all.front() : *found;
}

const Language *languageOfCode(const QString &code)
{
    const auto all = languages();
    const auto found = std::ranges::find(all, code, &Language::code);
    return found == all.end() ? nullptr : &*found;
}

Wording wordingIn(const Language &language)
{
    const auto translator = std::make_shared<QTranslator>();
    // Not the country of the system: "1.751,6" in an English paper may be read as 1.75.
    const QLocale locale(language.id);
    if (!translator->load(QStringLiteral(":/translations/lastrivet_%1.qm").arg(language.code)))
        return Wording(locale);
    return Wording(locale, [translator](std::string_view pattern) {
        const QByteArray source(pattern.data(), qsizetype(pattern.size()));
        for (const char *context : {"Message", "FieldName", "Word"}) {
            const QString words = translator->translate(context, source.constData());
            if (!words.isEmpty())
                return words;
        }
        return QString();
    });
}

} // namespace lastrivet::print
