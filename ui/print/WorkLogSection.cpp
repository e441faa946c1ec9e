// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Pages.h"
#include "ui/print/SessionLines.h"
#include "ui/print/Table.h"

#include <array>

namespace lastrivet::print {

namespace {

using packet::WorkLog;

constexpr std::array allRoles{Role::Builder,  Role::Helper,  Role::EarlierBuilder, Role::Commercial,
                              Role::Designer, Role::Adviser, Role::Inspector};

QString rolesOf(const Wording &words, const WorkLog::Total &total)
{
    QStringList roles;
    for (const Role role : allRoles) {
        if (total.roles.contains(role))
            roles << words.text(packet::inWords(role));
    }
    if (total.paid)
        roles << words.text("paid");
    return roles.join(QStringLiteral(", "));
}

QString whatOf(const Wording &words, const WorkLog::Session &session)
{
    QStringList lines = workOf(words, session);
    if (!session.source.empty())
        lines << words.text("From: {0}", {session.source});
    return lines.join(QLatin1Char('\n'));
}

void drawPeople(Pages &pages, const WorkLog &log)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Who"), 4},
                     {words.text("Role"), 4},
                     {words.text("Sessions"), 1.6, true},
                     {words.text("Time"), 1.8, true},
                     {words.text("Time not written down"), 2.6, true}};
    for (const WorkLog::Total &total : log.people) {
        QString name = asIs(total.name);
        if (!total.credential.empty())
            name += QStringLiteral(" (") + asIs(total.credential) + QLatin1Char(')');
        table.rows.push_back(
            {{{name},
              {rolesOf(words, total)},
              {words.number(total.sessions)},
              {words.hours(total.minutes)},
              {total.without_time == 0 ? QString() : words.number(total.without_time)}}});
    }
    pages.smallHeading(words.text("Who did it"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace

void drawWorkLog(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    pages.heading(0, words.text("Work log"), points(90));
    if (packet.work.sessions.empty()) {
        pages.text(words.text("No work on this region is on record."));
        return;
    }
    drawPeople(pages, packet.work);
    Table table;
    table.columns = {{words.text("When"), 2.3}, {words.text("Time"), 1.4, true},
                     {words.text("Part"), 3},   {words.text("What"), 5},
                     {words.text("Kind"), 2.1}, {words.text("Who"), 3.2}};
    for (const WorkLog::Session &session : packet.work.sessions)
        table.rows.push_back(
            {{{words.date(session.began, session.approximate)},
              {session.minutes ? words.hours(*session.minutes) : QStringLiteral("–")},
              {asIs(session.part)},
              {whatOf(words, session)},
              {words.text(packet::inWords(session.kind))},
              {workersOf(words, session)}}});
    pages.smallHeading(words.text("Day by day"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace lastrivet::print
