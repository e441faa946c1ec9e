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

#include <algorithm>
#include <cstddef>
#include <string>
#include <vector>

namespace lastrivet::print {

namespace {

using packet::FrontPages;
using packet::Packet;

/// Rows on the front pages beside those of what is grave.
constexpr std::size_t mostAskedRows = 20;
/// The question what becomes of a closing with gaps stands in a row for each, up to so many.
constexpr std::size_t mostDecisions = 12;

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

/// What to decide of a closing with gaps.
bool isDecision(const FrontPages::Request &request)
{
    return !request.record;
}

/// Where the packet is about one closing, that stands above, and need not be said of each; but what
/// is to be decided may be about a box inside.
bool isNamed(const Packet &packet, const FrontPages::Request &request)
{
    const auto &all = packet.front.to_close;
    return all.size() > 1 || (isDecision(request) && !all.empty() &&
                              request.about != std::vector<std::string>{all.front().title});
}

struct Asked {
    Table table;
    /// Points that it names or counts.
    std::size_t told = 0;
};

void addRow(Asked &asked, const Wording &words, const FrontPages::Request &request,
            const QString &closings, std::size_t points)
{
    asked.table.rows.push_back({{{words.text(packet::inWords(request.of)), Mark::EmptyBox},
                                 {words.sentence(request.what)},
                                 {closings}}});
    asked.told += points;
}

Asked askedIn(const Wording &words, const Packet &packet)
{
    Asked asked;
    Table &table = asked.table;
    table.columns = {{words.text("Of"), 1.2},
                     {words.text("What is asked"), 5.5},
                     {words.text("For closing"), 3}};
    const auto decisions = std::size_t(std::ranges::count_if(packet.front.asked, isDecision));
    const bool areSummed = decisions > mostDecisions;
    std::size_t others = 0;
    std::size_t decided = 0;
    for (const FrontPages::Request &request : packet.front.asked) {
        if (areSummed && isDecision(request)) {
            if (decided++ == 0)
                addRow(asked, words, request,
                       words.text("{0} closings, all named below as closed with gaps",
                                  {words.count(decisions)}),
                       decisions);
        } else if (request.is_grave || ++others <= mostAskedRows) {
            addRow(asked, words, request,
                   isNamed(packet, request) ? closingsOf(words, request) : QString(), 1);
        }
    }
    return asked;
}

} // namespace

void drawAsked(Pages &pages, const Packet &packet)
{
    const Wording &words = pages.wording();
    const auto [table, told] = askedIn(words, packet);
    const std::size_t count = packet.front.asked.size();
    const bool areAllNamed = told == count;
    const double above = areAllNamed ? 0 : lineHeight(Size::Small) + points(4);
    pages.smallHeading(words.text("What is asked"),
                       above + leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("Nothing waits for an inspector or adviser at present."));
    if (!areAllNamed) {
        pages.text(words.text("{0} points are asked; {1} of them are named here, all of them under "
                              "Readiness.",
                              {words.count(count), words.count(told)}),
                   Size::Small);
        pages.advance(points(4));
    }
    drawTable(pages, table);
}

} // namespace lastrivet::print
