// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/squawks/SquawkStory.h"

#include "core/project/acts/SquawkActs.h"
#include "ui/convert/QtText.h"
#include "ui/squawks/SquawkPeople.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>
#include <QStringList>

namespace lastrivet::ui {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("SquawkStory", text);
}

} // namespace

QString squawkStory(const Records &records, const Squawk &squawk)
{
    const QString found = dateText(*squawk.found_on);
    QStringList lines{squawk.found_by
                          ? tr("Found %1 by %2").arg(found, personName(records, squawk.found_by))
                          : tr("Found %1").arg(found)};
    if (squawk.fixed_on)
        lines.append(tr("Fixed %1 by %2: %3")
                         .arg(dateText(*squawk.fixed_on), personName(records, squawk.fixed_by),
                              toQt(squawk.correction)));
    if (squawk.verified_on)
        lines.append(
            tr("Verified %1 by %2")
                .arg(dateText(*squawk.verified_on), personName(records, squawk.verified_by)));
    if (squawk.accepted_on)
        lines.append(tr("Accepted as it is %1 by %2: %3")
                         .arg(dateText(*squawk.accepted_on),
                              personName(records, squawk.accepted_by),
                              toQt(squawk.accepted_basis)));
    if (acts::isOpen(squawk))
        lines.append(squawk.fixed_on
                         ? tr("Still to look at it: %1").arg(verifierOf(records, squawk))
                         : tr("Open. When it is fixed, this is who looks at it: %1")
                               .arg(verifierOf(records, squawk)));
    return lines.join(QLatin1Char('\n'));
}

} // namespace lastrivet::ui
