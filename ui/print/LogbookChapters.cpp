// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/InWords.h"
#include "ui/print/LogbookSections.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoRows.h"
#include "ui/print/SessionLines.h"
#include "ui/print/SquawkRows.h"
#include "ui/print/Table.h"

#include <QDate>

#include <algorithm>

namespace lastrivet::print {

namespace {

using packet::Logbook;
using packet::WorkLog;

bool isByDate(const Logbook &log)
{
    return log.choice.order == packet::LogOrder::ByDate;
}

/// What was done, then what else is to be known of the entry, a line each.
QString whatOf(const Wording &words, const Logbook &log, const Logbook::Entry &entry)
{
    const WorkLog::Session &session = entry.session;
    QStringList lines = workOf(words, session);
    if (session.place != log.usual_place && !session.place.empty())
        lines << words.text("place: {0}", {session.place});
    if (entry.changed_inspected)
        lines << words.text("changed what was inspected");
    if (!session.source.empty())
        lines << words.text("from: {0}", {session.source});
    addLine(lines, photosIn(words, entry.photos));
    return lines.join(QLatin1Char('\n'));
}

/// The day in a log by part; the time of day in a log by date, where the day stands above.
QString whenOf(const Wording &words, const Logbook &log, const Logbook::Entry &entry)
{
    const WorkLog::Session &session = entry.session;
    QString when;
    if (!isByDate(log))
        when = words.date(session.began, session.approximate);
    else if (session.began->hasTime())
        when = QTime(0, 0)
                   .addSecs(60 * session.began->minuteOfDay())
                   .toString(QStringLiteral("HH:mm"));
    if (isByDate(log) && session.approximate)
        when = words.text("about {0}", {when.toStdString()}).trimmed();
    if (entry.written_late_on)
        when += (when.isEmpty() ? QString() : QStringLiteral("\n")) +
                words.text("LATE, written {0}", {entry.written_late_on->text()});
    return when;
}

Table::Row rowOf(const Wording &words, const Logbook &log, const Logbook::Entry &entry)
{
    const WorkLog::Session &session = entry.session;
    return {{{whenOf(words, log, entry), Mark::None, entry.written_late_on.has_value()},
             {session.minutes ? words.hours(*session.minutes) : QStringLiteral("–")},
             {isByDate(log) ? asIs(session.part) : QString()},
             {whatOf(words, log, entry)},
             {words.text(packet::inWords(session.kind))},
             {workersOf(words, session)}}};
}

Table::Row sumOf(const Wording &words, const Logbook::Chapter &chapter)
{
    const QString both = words.text("entries: {0}; all who worked: {1}",
                                    {words.number(chapter.total.sessions).toStdString(),
                                     words.hours(chapter.total.worker_minutes).toStdString()});
    return {{{words.text("Sum"), Mark::None, true},
             {words.hours(chapter.total.minutes), Mark::None, true},
             {},
             {both, Mark::None, true},
             {},
             {}}};
}

Table tableOf(const Wording &words, const Logbook &log, const Logbook::Chapter &chapter)
{
    Table table;
    table.columns = {{words.text(isByDate(log) ? "Began" : "When"), isByDate(log) ? 1.6 : 2.1},
                     {words.text("Time"), 1.5, true},
                     {words.text("Part"), 3},
                     {words.text("What"), 5.4},
                     {words.text("Kind"), 1.9},
                     {words.text("Who"), 2.8}};
    std::optional<std::chrono::sys_days> day;
    for (const Logbook::Entry &entry : chapter.entries) {
        if (isByDate(log) && day != entry.session.began->day())
            table.rows.push_back(
                {{{words.date(entry.session.began->dayOnly())}}, Table::Bar::None, true});
        day = entry.session.began->day();
        table.rows.push_back(rowOf(words, log, entry));
    }
    table.rows.push_back(sumOf(words, chapter));
    return table;
}

void drawChapter(Pages &pages, const Logbook &log, const Logbook::Chapter &chapter,
                 PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    const Table table = tableOf(words, log, chapter);
    pages.heading(1, chapterTitle(words, chapter),
                  leastHeightOf(table, pages.body().width()) + points(30));
    if (!chapter.entries.empty())
        drawTable(pages, table);
    drawPhotoRows(pages, chapter.photos, shelf);
}

} // namespace

QString chapterTitle(const Wording &words, const Logbook::Chapter &chapter)
{
    if (chapter.month > 0)
        return words.locale().toString(QDate(chapter.year, chapter.month, 1),
                                       QStringLiteral("MMMM yyyy"));
    return chapter.part.empty() ? words.text("Work on no part") : asIs(chapter.part);
}

void drawLogbookChapters(Pages &pages, const Logbook &log, PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    pages.breakPage();
    pages.heading(0, words.text(isByDate(log) ? "The log by date" : "The log by part"),
                  points(120));
    if (log.chapters.empty())
        pages.text(words.text("Nothing is on record for this time."));
    for (const Logbook::Chapter &chapter : log.chapters)
        drawChapter(pages, log, chapter, shelf);
}

} // namespace lastrivet::print
