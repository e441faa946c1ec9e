// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/JournalPrinter.h"

#include "core/base/Tongue.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/Cautions.h"
#include "ui/print/JournalWords.h"
#include "ui/print/Table.h"
#include "ui/print/Title.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

using Entry = packet::JournalReport::Entry;

/// An import may touch thousands; the row and its hash stand for the rest.
constexpr std::size_t mostRecords = 200;
constexpr qsizetype longestValue = 600;
constexpr std::size_t hashDigits = 16;

QString shortened(QString text)
{
    if (text.size() > longestValue)
        text = text.left(longestValue) + QStringLiteral("…");
    return text;
}

/// "Name: Bay 3".
QString ofWhich(const Wording &words, const QString &name, const QString &said)
{
    return words.text("{0}: {1}", {name.toStdString(), said.toStdString()});
}

QString accountIn(const Wording &words, const journal::RecordAccount &record)
{
    const QString became = becameIn(words, record.kind);
    const QString name = words.sentence(record.name);
    QStringList lines{became.isEmpty() ? name : ofWhich(words, name, became)};
    for (const journal::FieldAccount &field : record.fields) {
        const QString change = changeIn(words, field, record.kind);
        if (!change.isEmpty())
            lines << QStringLiteral("    ") +
                         ofWhich(words, titleIn(words, field.field), shortened(change));
    }
    return lines.join(QLatin1Char('\n'));
}

QStringList marksOf(const Wording &words, const Entry &entry)
{
    QStringList marks{kindIn(words, entry.row)};
    if (!entry.undone.empty())
        marks << words.text("it takes back: {0}", {entry.undone});
    marks << marksIn(words, entry.is_pushed_ahead, entry.late);
    marks.removeAll(QString());
    return marks;
}

QString whatIn(const Wording &words, const Entry &entry)
{
    QStringList lines = marksOf(words, entry);
    for (std::size_t i = 0; i < std::min(entry.records.size(), mostRecords); ++i)
        lines << accountIn(words, entry.records[i]);
    if (entry.records.size() > mostRecords)
        lines << words.text("and {0} records more",
                            {words.count(entry.records.size() - mostRecords)});
    if (entry.row.kind == ChangeKind::Printed)
        lines << words.text("At the foot of its pages: {0}", {entry.row.hash});
    if (!entry.row.origin_hash.empty())
        lines << words.text("In the copy that wrote it: {0}", {entry.row.origin_hash});
    return lines.join(QLatin1Char('\n'));
}

QString timeOf(const Entry &entry)
{
    return QStringLiteral("%1:%2")
        .arg(entry.at.minuteOfDay() / 60, 2, 10, QLatin1Char('0'))
        .arg(entry.at.minuteOfDay() % 60, 2, 10, QLatin1Char('0'));
}

QString placeOf(const Wording &words, const Entry &entry)
{
    return words.number(entry.row.seq) + QLatin1Char('\n') +
           asIs(entry.row.hash.substr(0, hashDigits / 2)) + QLatin1Char('\n') +
           asIs(entry.row.hash.substr(hashDigits / 2, hashDigits / 2));
}

Table tableOf(const Wording &words, const packet::JournalReport &report)
{
    Table table;
    table.columns = {{words.text("Time"), 1.1},
                     {words.text("Who"), 2},
                     {words.text("What"), 9},
                     {words.text("Row, and its hash begins"), 2}};
    std::optional<Moment> day;
    for (const Entry &entry : report.entries) {
        if (day != entry.at.dayOnly()) {
            day = entry.at.dayOnly();
            Table::Row head{{{words.date(*day)}}};
            head.is_group = true;
            table.rows.push_back(std::move(head));
        }
        const QString rest = whatIn(words, entry);
        table.rows.push_back(
            {{{timeOf(entry)},
              {asIs(entry.row.who)},
              {asIs(entry.row.label) + (rest.isEmpty() ? rest : QLatin1Char('\n') + rest)},
              {placeOf(words, entry)}}});
    }
    return table;
}

QString filterIn(const Wording &words, const packet::JournalReport::Filter &filter)
{
    QStringList said;
    if (filter.about)
        said << words.text("only what touched {0}", {nested(*filter.about)});
    if (!filter.words.empty())
        said << words.text("with the words “{0}”", {filter.words});
    if (!filter.who.empty())
        said << asIs(filter.who);
    if (filter.kind == ChangeKind::Change)
        said << words.text("changes");
    else if (filter.kind)
        said << kindIn(words, *filter.kind);
    if (filter.from)
        said << words.text("from {0}", {filter.from->dayOnly().text()});
    if (filter.until)
        said << words.text("until {0}", {filter.until->dayOnly().text()});
    return words.listed(said);
}

void drawJournal(Pages &pages, const packet::JournalReport &report)
{
    const Wording &words = pages.wording();
    Table table = tableOf(words, report);
    table.kept_behind = heightOfCautions(pages, report.cautions, About::Figures);
    drawTitle(pages, words.text("Journal"), aircraftName(report.aircraft), {});
    pages.text(words.text("Who changed what in these records, field by field, and when. As of {0}.",
                          {report.as_of.text()}));
    const QString filter = filterIn(words, report.filter);
    pages.text(filter.isEmpty()
                   ? words.text(report.rows_in_all == 1 ? "Nothing is left out: 1 row."
                                                        : "Nothing is left out: {0} rows.",
                                {words.count(report.rows_in_all)})
                   : words.text("{0} of {1} rows; left out is what does not match: {2}.",
                                {words.count(report.entries.size()),
                                 words.count(report.rows_in_all), filter.toStdString()}));
    pages.text(words.text("Each row's hash is made of the row and of the hash before it: one row "
                          "changed later would change every hash after it. A paper that was "
                          "printed from these records has a hash at its foot and dates them."),
               Size::Small);
    pages.heading(0, words.text("Changes"), leastHeightOf(table, pages.body().width()));
    if (report.entries.empty())
        pages.text(words.text("No row matches."));
    drawTable(pages, table);
    drawCautions(pages, report.cautions, About::Figures);
}

} // namespace

std::optional<Printed> printJournal(const packet::JournalReport &report, const Imprint &imprint,
                                    const Choices &choices, const std::filesystem::path &place,
                                    const OnPercent &onPercent)
{
    Document document = documentAbout(report.aircraft, choices.wording.text("Journal"));
    document.sections = {[&](Pages &pages, PictureShelf &) { drawJournal(pages, report); }};
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
