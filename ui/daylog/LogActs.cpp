// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/daylog/LogActs.h"

#include "core/entry/MoveText.h"
#include "core/entry/SplitText.h"
#include "core/project/acts/Sessions.h"
#include "ui/convert/QtText.h"
#include "ui/shell/Session.h"
#include "ui/widgets/ActLine.h"
#include "ui/widgets/RecordNames.h"

#include <QCoreApplication>

namespace lastrivet::ui {

namespace {

QString translated(const char *text, int count = -1)
{
    return QCoreApplication::translate("LogActs", text, nullptr, count);
}

bool split(Session &session, Id<WorkSession> entry, const QString &text)
{
    const auto records = session.records();
    const WorkSession *whole = records->findLive(entry);
    if (!whole)
        return false;
    const auto pieces = entry::readSplit(toStd(text), *whole, session.partFinder());
    if (!pieces) {
        session.complain(inWords(pieces.reason()));
        return false;
    }
    return session.change(translated("Log entry split into %n", int(pieces->size())),
                          [&](Edit &edit) { acts::splitSession(edit, entry, *pieces); });
}

bool move(Session &session, const std::vector<Id<WorkSession>> &entries, const QString &text)
{
    const auto to = entry::readMove(toStd(text), session.partFinder(), session.today());
    if (!to) {
        session.complain(inWords(to.reason()));
        return false;
    }
    return session.change(translated("%n log entries moved", int(entries.size())), [&](Edit &edit) {
        for (const auto entry : entries)
            acts::moveSession(edit, entry, to->day, to->part);
    });
}

} // namespace

void askToSplit(Session &session, ActLine &ask, Id<WorkSession> entry)
{
    const auto records = session.records();
    const WorkSession *whole = records->findLive(entry);
    if (!whole)
        return;
    const QString words =
        whole->minutes
            ? translated("%1 in pieces: parts, times or both, with a plus sign between them, as in "
                         "“LA + RW” or “40m + RW 20m”. What says no time shares the rest.")
                  .arg(hoursText(*whole->minutes))
            : translated("The entry once for each part, with a plus sign between them.");
    ask.ask({.words = words,
             .confirm = translated("Split"),
             .textLabel = translated("Pieces"),
             .textMissing = translated("Say at least two parts or times.")},
            [&session, entry](const ActLine::Answer &answer) {
                return split(session, entry, answer.text);
            });
}

void askToMove(Session &session, ActLine &ask, const std::vector<Id<WorkSession>> &entries)
{
    if (entries.empty())
        return;
    std::vector<RecordRef> records;
    for (const auto entry : entries)
        records.push_back({RecordType::WorkSession, entry.value()});
    ask.ask(
        {.words = translated("%n entries go to another day, another part, or both, as in "
                             "“yesterday”, “LA” or “3 Mar left aileron”. The time of day stays.",
                             int(entries.size())) +
                  whichOf(*session.records(), records),
         .confirm = translated("Move"),
         .textLabel = translated("To"),
         .textMissing = translated("Say the day, the part, or both.")},
        [&session, entries](const ActLine::Answer &answer) {
            return move(session, entries, answer.text);
        });
}

} // namespace lastrivet::ui
