// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketSections.h"

#include "core/base/ParseNumber.h"
#include "core/packet/InWords.h"
#include "ui/print/Facts.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/Phrases.h"
#include "ui/print/SignedTable.h"

#include <cstdint>
#include <string>
#include <utility>

namespace lastrivet::print {

namespace {

using packet::Standing;

QString joined(const std::vector<std::string> &texts)
{
    QStringList list;
    for (const std::string &text : texts)
        list << asIs(text);
    return list.join(QStringLiteral(", "));
}

void drawState(Pages &pages, const Standing &standing)
{
    const Wording &words = pages.wording();
    const double side = points(20);
    pages.need(side + points(4));
    QPainter &painter = pages.painter();
    drawMark(painter, markOf(standing.state, standing.begun),
             QRectF(pages.body().left(), pages.y(), side, side));
    painter.setPen(Qt::black);
    fitted(words.sentence(packet::inWords(standing.state, standing.begun)), Size::Body,
           pages.body().width() - points(30), 1, true)
        .draw(painter, {pages.body().left() + points(28), pages.y() + points(4)});
    pages.advance(side + points(6));
}

QString kindOf(const Wording &words, const Standing &standing)
{
    if (standing.made_by == MadeBy::Factory)
        return words.text("closed by the maker");
    QString kind = words.text(standing.permanent ? "permanent" : "can be opened again");
    if (standing.made_by == MadeBy::EarlierBuilder)
        kind += QStringLiteral(", ") + words.text("closed by an earlier builder");
    return kind;
}

QString countsOf(const Wording &words, const readiness::OnRecord &known)
{
    const std::pair<std::string_view, std::int64_t> counts[] = {
        {"steps {0}", known.steps},
        {"work sessions {0}", known.sessions},
        {"photographs {0}", known.photos},
        {"squawks {0}", known.squawks},
        {"deviations {0}", known.deviations},
        {"lines of fasteners {0}", known.fasteners},
        {"measurements {0}", known.measurements},
        {"uses of material {0}", known.material_uses},
        {"packing lines {0}", known.part_lines},
        {"lines to check {0}", known.checks},
    };
    QStringList pieces;
    for (const auto &[pattern, count] : counts)
        pieces << words.text(pattern, {words.number(count).toStdString()});
    return pieces.join(QStringLiteral(", "));
}

void drawWhatItIs(Pages &pages, const Standing &standing)
{
    const Wording &words = pages.wording();
    drawFacts(pages, {{words.text("Part"), asIs(standing.part)},
                      {words.text("Kind"), kindOf(words, standing)},
                      {words.text("Encloses"), joined(standing.encloses)},
                      {words.text("Method"), asIs(standing.method)},
                      {words.text("On record"), countsOf(words, standing.on_record)}});
}

void drawHoldPoints(Pages &pages, const Standing &standing)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Hold point"), 3},
                     {words.text("Who signs"), 1.6},
                     {words.text("Standing"), 5},
                     {words.text("Source"), 3.4}};
    for (const Standing::HoldPointLine &line : standing.hold_points)
        table.rows.push_back({{{words.sentence(packet::inWords(line.kind)) + QLatin1Char('\n') +
                                    words.text(line.required ? "required" : "not required"),
                                Mark::None, false},
                               {words.text(packet::inWords(line.signer_role))},
                               standingOf(words, line),
                               {sourceIn(words, line.source)}}});
    pages.smallHeading(words.text("Hold points"), leastHeightOf(table, pages.body().width()));
    if (table.rows.empty())
        pages.text(words.text("This closing has no hold point."), Size::Small);
    drawTable(pages, table);
}

void drawHistory(Pages &pages, const Standing &standing)
{
    if (standing.events.empty() && standing.late_acceptances.empty())
        return;
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("What"), 2},
                     {words.text("When"), 2},
                     {words.text("By"), 2},
                     {words.text("Reason"), 6}};
    for (const Standing::Event &event : standing.events)
        table.rows.push_back(
            {{{words.text(event.closed_on ? "Closed" : "Opened")},
              {words.date(event.closed_on ? event.closed_on : event.opened_on, event.approximate)},
              {asIs(event.by)},
              {asIs(event.reason)}}});
    for (const Standing::Signature &late : standing.late_acceptances)
        table.rows.push_back({{{words.text("Accepted late")},
                               {words.date(late.signed_on)},
                               {asIs(late.by)},
                               {asIs(late.remarks)}}});
    pages.smallHeading(words.text("Closed and opened"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

Table::Row findingRow(const Wording &words, const Standing::Finding &finding)
{
    const bool isMust = finding.weight == readiness::Weight::Must;
    return {{{QString()}, {words.sentence(finding.what)}, {words.sentence(finding.cleared_by)}},
            isMust ? Table::Bar::Must : Table::Bar::Should};
}

/// The core writes counts without a sign between thousands.
QString lookedAtIn(const Wording &words, Message counted)
{
    for (std::string &argument : counted.arguments) {
        if (const auto count = parseNumber<std::int64_t>(argument))
            argument = words.number(*count).toStdString();
    }
    return words.text(counted);
}

/// What came of a rule, and of how much: "met (7 measurements)". Where something was found its
/// count comes first, since "not met (7 measurements)" would read as if none of them were.
QString outcomeIn(const Wording &words, const Standing::RuleLine &line)
{
    const QString outcome = words.text(readiness::inWords(line.outcome));
    if (line.outcome == readiness::Outcome::NothingOnRecord)
        return outcome;
    const QString lookedAt = lookedAtIn(words, line.looked_at);
    if (line.findings.empty())
        return outcome + QStringLiteral(" (") + lookedAt + QLatin1Char(')');
    const std::string found = words.count(line.findings.size());
    const QString points = line.findings.size() == 1
                               ? words.text("{0}: 1 point", {outcome.toStdString()})
                               : words.text("{0}: {1} points", {outcome.toStdString(), found});
    return points + QLatin1Char('\n') +
           (line.has_none ? words.text("nothing on record")
                          : words.text("on record: {0}", {lookedAt.toStdString()}));
}

void addRule(Table &table, const Wording &words, const Standing::RuleLine &line)
{
    const QString outcome = outcomeIn(words, line);
    const bool isBold = line.outcome == readiness::Outcome::NotMet;
    table.rows.push_back({{{outcome, markOf(line.outcome), isBold},
                           {words.sentence(line.demand), Mark::None, isBold}}});
    table.rows.back().is_with_next = !line.findings.empty();
    for (const Standing::Finding &finding : line.findings)
        table.rows.push_back(findingRow(words, finding));
}

void drawRules(Pages &pages, const Standing &standing)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Outcome"), 2.7},
                     {words.text("What is asked of the records"), 4.6},
                     {words.text(isClosed(standing.state) ? "What would have cleared it"
                                                          : "What would clear it"),
                      3.6}};
    for (const Standing::RuleLine &line : standing.rules)
        addRule(table, words, line);
    pages.smallHeading(words.text(isClosed(standing.state)
                                      ? "Every rule, as it stood when it was closed"
                                      : "Every rule"),
                       leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

void drawStanding(Pages &pages, const Standing &standing)
{
    drawClosingRecord(pages, standing);
    if (standing.made_by != MadeBy::Factory)
        drawRules(pages, standing);
}

} // namespace

void drawClosingRecord(Pages &pages, const Standing &standing)
{
    pages.heading(1, asIs(standing.title), points(140));
    drawState(pages, standing);
    drawWhatItIs(pages, standing);
    drawHoldPoints(pages, standing);
    drawHistory(pages, standing);
}

void drawReadiness(Pages &pages, const packet::Packet &packet)
{
    const Wording &words = pages.wording();
    pages.breakPage();
    pages.heading(0, words.text("Readiness"), points(120));
    pages.text(words.text("A full bar keeps the closing open; a broken bar is advice. Nothing on "
                          "record is not the same as met."),
               Size::Small);
    for (const Standing &standing : packet.standings)
        drawStanding(pages, standing);
}

void drawWithin(Pages &pages, const packet::Packet &packet)
{
    if (packet.within.empty())
        return;
    const Wording &words = pages.wording();
    const Table table = signedTable(words, packet.within);
    pages.heading(0, words.text("Boxes inside, and who signed them"),
                  leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

} // namespace lastrivet::print
