// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SessionLines.h"

#include "ui/print/Wording.h"

namespace lastrivet::print {

QStringList workOf(const Wording &words, const packet::WorkLog::Session &session)
{
    QStringList lines;
    if (!session.step.empty())
        lines << asIs(session.step);
    if (!session.squawk.empty())
        lines << words.text("squawk {0}", {session.squawk});
    if (!session.note.empty())
        lines << asIs(session.note);
    return lines;
}

QString workersOf(const Wording &words, const packet::WorkLog::Session &session)
{
    QStringList lines;
    for (const packet::WorkLog::Worker &worker : session.workers) {
        QString line = asIs(worker.name);
        if (worker.minutes && worker.minutes != session.minutes)
            line += QStringLiteral(", ") + words.hours(*worker.minutes);
        if (worker.paid)
            line += QStringLiteral(", ") + words.text("paid");
        lines << line;
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace lastrivet::print
