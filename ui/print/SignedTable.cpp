// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/SignedTable.h"

#include "core/base/Tongue.h"
#include "core/packet/InWords.h"
#include "ui/print/Mark.h"
#include "ui/print/Wording.h"

#include <QStringList>

#include <string>

namespace lastrivet::print {

namespace {

using packet::Standing;

QString signatureIn(const Wording &words, const Standing::Signature &signature)
{
    QStringList lines{words.sentence(packet::inWords(signature.result)) + QStringLiteral(", ") +
                      words.date(signature.signed_on)};
    QString who = asIs(signature.by);
    if (!signature.credential.empty())
        who += QStringLiteral(" (") + asIs(signature.credential) + QLatin1Char(')');
    lines << who;
    lines << words.text(packet::inWords(signature.seen)) + QStringLiteral(", ") +
                 words.text(signature.has_sheet ? "signed sheet filed" : "no sheet filed");
    if (!signature.remarks.empty())
        lines << asIs(signature.remarks);
    return lines.join(QLatin1Char('\n'));
}

Mark markOfResult(const Standing::Signature &signature)
{
    return signature.result == SignOffResult::Rejected ? Mark::NotMet : Mark::Met;
}

/// A line about a signature that another one, or a waiver, has taken the place of.
QString beforeIn(const Wording &words, const Standing::Signature &signature)
{
    return QLatin1Char('\n') +
           words.text("Before: {0}, {1}, {2}",
                      {nested(packet::inWords(signature.result)),
                       signature.signed_on ? signature.signed_on->text() : std::string(),
                       signature.by});
}

QString allBeforeIn(const Wording &words, const Standing::HoldPointLine &line)
{
    QString lines;
    for (const Standing::Signature &signature : line.before)
        lines += beforeIn(words, signature);
    return lines;
}

/// "Last baffle of the tank · closed · 14 Mar 2026, Berta Builder".
QString headOf(const Wording &words, const Standing &standing)
{
    QStringList pieces{asIs(standing.title),
                       words.text(packet::inWords(standing.state, standing.begun))};
    if (!standing.events.empty() && standing.events.back().closed_on) {
        const Standing::Event &closed = standing.events.back();
        pieces << words.day(closed.closed_on, closed.approximate) +
                      (closed.by.empty() ? QString() : QStringLiteral(", ") + asIs(closed.by));
    }
    return pieces.join(QStringLiteral(" · "));
}

void addClosing(Table &table, const Wording &words, const Standing &standing)
{
    table.rows.push_back({{{headOf(words, standing)}}, Table::Bar::None, true});
    if (standing.hold_points.empty() && standing.late_acceptances.empty())
        table.rows.push_back({{{words.text("no hold point")}}});
    for (const Standing::HoldPointLine &line : standing.hold_points)
        table.rows.push_back({{{words.sentence(packet::inWords(line.kind)) + QLatin1Char('\n') +
                                words.text(packet::inWords(line.signer_role))},
                               standingOf(words, line)}});
    for (const Standing::Signature &late : standing.late_acceptances)
        table.rows.push_back(
            {{{words.text("Accepted late")}, {signatureIn(words, late), markOfResult(late)}}});
}

} // namespace

Table::Cell standingOf(const Wording &words, const Standing::HoldPointLine &line)
{
    if (line.waived_on) {
        const QString last = line.signature ? beforeIn(words, *line.signature) : QString();
        return {words.text("Waived on {0} by {1}: {2}",
                           {line.waived_on->text(), line.waived_by, line.waived_why}) +
                allBeforeIn(words, line) + last};
    }
    if (!line.signature)
        return {words.text("Not signed"), line.required ? Mark::NotMet : Mark::Advice, true};
    if (line.is_outdated)
        return {signatureIn(words, *line.signature) + QLatin1Char('\n') +
                    words.text("Out of date: something was changed after it") +
                    allBeforeIn(words, line),
                Mark::NotMet};
    return {signatureIn(words, *line.signature) + allBeforeIn(words, line),
            markOfResult(*line.signature)};
}

Table signedTable(const Wording &words, const std::vector<Standing> &standings)
{
    Table table;
    table.columns = {{words.text("Hold point"), 3}, {words.text("Signature"), 7}};
    for (const Standing &standing : standings)
        addClosing(table, words, standing);
    return table;
}

} // namespace lastrivet::print
