// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/Measures.h"
#include "ui/print/PacketSections.h"

#include "core/packet/InWords.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"
#include "ui/print/Wording.h"

#include <QStringList>

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace lastrivet::print {

namespace {

using packet::FrontPages;
using packet::Packet;

/// Rows on the front pages beside those of what is grave.
constexpr std::size_t mostAskedRows = 20;

QString closingsOf(const Wording &words, const FrontPages::Request &request)
{
    QStringList titles;
    for (const std::string &title : request.about)
        titles << asIs(title);
    constexpr qsizetype mostTitles = 2;
    const qsizetype more = titles.size() - mostTitles;
    const QString line = titles.mid(0, mostTitles).join(QStringLiteral(", "));
    return more > 0 ? words.text("{0} and {1} more",
                                 {line.toStdString(), words.count(std::size_t(more))})
                    : line;
}

Table tableOf(const Wording &words, const Packet &packet)
{
    Table table;
    table.columns = {{words.text("Of"), 1.2},
                     {words.text("What is asked"), 5.5},
                     {words.text("For closing"), 3}};
    // Where it is about one closing, that stands above, and need not be said of each.
    const bool areSeveral = packet.front.to_close.size() > 1;
    std::size_t others = 0;
    for (const FrontPages::Request &request : packet.front.asked) {
        if (!request.is_grave && ++others > mostAskedRows)
            continue;
        table.rows.push_back({{{words.text(packet::inWords(request.of)), Mark::EmptyBox},
                               {words.sentence(request.what)},
                               {areSeveral ? closingsOf(words, request) : QString()}}});
    }
    return table;
}

} // namespace

void drawAsked(Pages &pages, const Packet &packet)
{
    const Wording &words = pages.wording();
    const Table table = tableOf(words, packet);
    const std::size_t count = packet.front.asked.size();
    const bool areAllNamed = table.rows.size() == count;
    const double above = areAllNamed ? 0 : lineHeight(Size::Small) + points(4);
    pages.smallHeading(words.text("What is asked"),
                       above + leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("Nothing waits for an inspector or adviser at present."));
    if (!areAllNamed) {
        pages.text(words.text("{0} points are asked; {1} of them are named here, all of them under "
                              "Readiness.",
                              {words.number(std::int64_t(count)).toStdString(),
                               words.number(std::int64_t(table.rows.size())).toStdString()}),
                   Size::Small);
        pages.advance(points(4));
    }
    drawTable(pages, table);
}

} // namespace lastrivet::print
