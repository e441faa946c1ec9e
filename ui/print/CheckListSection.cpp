// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "ui/print/Pages.h"
#include "ui/print/Phrases.h"
#include "ui/print/Table.h"
#include "ui/print/TextBlock.h"

#include <QStringList>

namespace lastrivet::print {

namespace {

constexpr double roomToWrite = points(24);

/// The distinct sources of a list, numbered from 1: said once below it instead of in every row.
class Sources {
public:
    /// The number to print in a row; empty for a line without a source.
    QString numberOf(const QString &source)
    {
        if (source.isEmpty())
            return {};
        const qsizetype known = m_sources.indexOf(source);
        if (known < 0)
            m_sources.append(source);
        return QString::number(known < 0 ? m_sources.size() : known + 1);
    }

    double height(const Pages &pages) const
    {
        double sum = m_sources.isEmpty() ? 0 : above;
        for (qsizetype i = 0; i < m_sources.size(); ++i)
            sum += TextBlock(note(i), Size::Small, pages.body().width()).height();
        return sum;
    }

    void draw(Pages &pages) const
    {
        if (m_sources.isEmpty())
            return;
        pages.advance(above);
        for (qsizetype i = 0; i < m_sources.size(); ++i)
            pages.text(note(i), Size::Small);
    }

private:
    static constexpr double above = points(6);

    QString note(qsizetype i) const
    {
        return QStringLiteral("%1  %2").arg(QString::number(i + 1), m_sources[i]);
    }

    QStringList m_sources;
};

Table::Row rowOf(const Wording &words, Sources &sources, const packet::CheckList::Line &line)
{
    Table::Cell builder;
    if (line.not_applicable) {
        builder = {words.text("does not apply"), Mark::CrossedBox};
    } else if (line.done_on) {
        builder = {words.day(line.done_on) + QLatin1Char('\n') + asIs(line.done_by),
                   Mark::TickedBox};
    } else {
        builder = {QString(), Mark::EmptyBox};
    }
    // Also of a closing's own list most lines are the profile's; what a builder wrote stays as it
    // is.
    return {{{words.text(line.item)},
             builder,
             {QString(), Mark::EmptyBox},
             {},
             {sources.numberOf(sourceIn(words, line.source))}},
            Table::Bar::None,
            false,
            roomToWrite};
}

void drawList(Pages &pages, const packet::CheckList &list)
{
    const Wording &words = pages.wording();
    Table table;
    Sources sources;
    table.columns = {{words.text("Look at"), 5.6},
                     {words.text("Builder"), 2.6},
                     {words.text("Inspector"), 1.5},
                     {words.text("Remarks"), 3.4, false, true},
                     {words.text("Source"), 1.1, true}};
    for (const packet::CheckList::Line &line : list.lines)
        table.rows.push_back(rowOf(words, sources, line));
    // The numbers in the last rows and what they stand for come to one page.
    table.kept_behind = sources.height(pages);
    pages.heading(1, asIs(list.closing), points(20) + leastHeightOf(table, pages.body().width()));
    if (list.is_from_profile && !list.lines.empty()) {
        pages.text(words.text("No list was kept for this closing; these are the usual points for "
                              "a structure of its kind."),
                   Size::Small);
        pages.advance(points(4));
    }
    if (list.lines.empty())
        pages.text(words.text("There is no list for this closing."));
    drawTable(pages, table);
    sources.draw(pages);
}

} // namespace

void drawCheckLists(Pages &pages, const packet::Packet &packet)
{
    if (packet.check_lists.empty())
        return;
    pages.breakPage();
    pages.heading(0, pages.wording().text("The inspector's list"), points(80));
    for (const packet::CheckList &list : packet.check_lists)
        drawList(pages, list);
}

} // namespace lastrivet::print
