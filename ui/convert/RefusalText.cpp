// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/convert/RefusalText.h"

#include "core/project/Project.h"
#include "ui/convert/QtText.h"

#include <QStringList>

namespace lastrivet::ui {

QString inWords(const Refusal &refusal)
{
    QStringList sentences;
    if (!refusal.message.pattern.empty())
        sentences.append(inWords(refusal.message));
    for (const Violation &violation : refusal.violations)
        sentences.append(inWords(violation.message));
    return sentences.join(QLatin1Char(' '));
}

} // namespace lastrivet::ui
