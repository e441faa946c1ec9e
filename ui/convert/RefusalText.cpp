// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/RefusalText.h"

#include "core/base/Error.h"
#include "core/project/Project.h"
#include "ui/convert/QtText.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

namespace {

QString nothingChanged(const QString &why)
{
    return QCoreApplication::translate("Session", "Nothing was changed: %1").arg(why);
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
    return nothingChanged(inWords(refusal));
}

QString nothingChanged(const Fault &fault)
{
    const QString words = inWords(fault.message());
    return fault.saysNothingWasChanged() ? words : nothingChanged(words);
}

} // namespace lastrivet::ui
