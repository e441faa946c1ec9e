// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/RefusalText.h"

#include "core/project/Project.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QStringList>

#include <string>

namespace lastrivet::ui {

namespace {

QString saidOnce(const Message &why, const QString &words)
{
    return why.pattern.find("othing was changed") != std::string::npos
               ? words
               : QCoreApplication::translate("Session", "Nothing was changed: %1").arg(words);
}

} // namespace

QString inWords(const Refusal &refusal)
{
    QStringList sentences;
    if (!refusal.message.pattern.empty())
        sentences.append(inWords(refusal.message));
    for (const Violation &violation : refusal.violations)
        sentences.append(inWords(violation.message));
    return sentences.join(QLatin1Char(' '));
}

QString nothingChanged(const Refusal &refusal)
{
    return saidOnce(refusal.message, inWords(refusal));
}

QString nothingChanged(const Message &why)
{
    return saidOnce(why, inWords(why));
}

} // namespace lastrivet::ui
