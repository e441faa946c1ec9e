// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/CorrectionsSections.h"

#include "core/base/Tongue.h"
#include "core/packet/InWords.h"
#include "ui/print/Facts.h"
#include "ui/print/Mark.h"
#include "ui/print/Pages.h"
#include "ui/print/PhotoGrid.h"
#include "ui/print/SquawkRows.h"
#include "ui/print/Table.h"

namespace lastrivet::print {

namespace {

using packet::CorrectionsReport;
using packet::SquawkEntry;

QString standingIn(const Wording &words, const CorrectionsReport &report)
{
    if (report.findings.empty())
        return words.text("No finding of this visit is on record.");
    if (report.openCount() == 0)
        return words.text("All findings are verified or accepted.");
    return words.text("Findings: {0}. Neither verified nor accepted: {1}; corrected of these: {2}.",
                      {words.count(report.findings.size()), words.count(report.openCount()),
                       words.count(report.correctedCount())});
}

QString correctionIn(const Wording &words, const SquawkEntry &squawk)
{
    if (squawk.fixed_on)
        return asIs(squawk.correction) + QLatin1Char('\n') +
               dateAndName(words, squawk.fixed_on, squawk.fixed_by);
    return squawk.repair_plan.empty() ? words.text("not corrected yet")
                                      : words.text("planned: {0}", {squawk.repair_plan});
}

constexpr double abovePictures = points(6);
constexpr double sideNames = points(13);

bool hasPictures(const CorrectionsReport::Finding &finding)
{
    return !finding.before.empty() || !finding.after.empty();
}

void drawBeforeAndAfter(Pages &pages, const CorrectionsReport::Finding &finding,
                        PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    if (!hasPictures(finding)) {
        pages.text(words.text("No photograph of it is on record."), Size::Small);
        return;
    }
    const double half = pages.body().width() / 2 + points(7);
    pages.advance(abovePictures);
    pages.need(sideNames + heightOfFirstPair(pages, finding.before, finding.after, shelf));
    pages.painter().setPen(Qt::black);
    TextBlock(words.text("Before"), Size::Small, half, true)
        .draw(pages.painter(), {pages.body().left(), pages.y()});
    TextBlock(words.text("After"), Size::Small, half, true)
        .draw(pages.painter(), {pages.body().left() + half, pages.y()});
    pages.advance(sideNames);
    drawSideBySide(pages, finding.before, finding.after, shelf, true);
}

Table tableOf(const Wording &words, const CorrectionsReport::Finding &finding)
{
    const SquawkEntry &squawk = finding.squawk;
    Table table;
    table.columns = {{words.text("Squawk"), 2.2},
                     {words.text("Finding"), 4},
                     {words.text("Correction"), 4},
                     {words.text("Verified"), 3}};
    QStringList found{words.sentence(packet::inWords(squawk.severity))};
    for (const std::string &text : {squawk.part, squawk.detail, finding.note}) {
        if (!text.empty())
            found << asIs(text);
    }
    found << words.text("found {0}",
                        {words.date(squawk.found_on, squawk.approximate).toStdString()});
    table.rows.push_back({{{asIs(squawk.number), markOf(squawk.severity)},
                           {found.join(QLatin1Char('\n'))},
                           {correctionIn(words, squawk), Mark::None, !squawk.fixed_on},
                           {verifiedIn(words, squawk)}}});
    return table;
}

/// Of what stands below a finding's heading, as much as is not to be torn from it: the table, and
/// the first pictures.
double leastBelow(Pages &pages, const CorrectionsReport::Finding &finding, PictureShelf &shelf)
{
    const double table =
        leastHeightOf(tableOf(pages.wording(), finding), pages.body().width()) + points(1);
    if (!hasPictures(finding))
        return table + lineHeight(Size::Small);
    return table + abovePictures + sideNames +
           heightOfFirstPair(pages, finding.before, finding.after, shelf);
}

void drawFinding(Pages &pages, const CorrectionsReport::Finding &finding, PictureShelf &shelf,
                 bool isKnownToContents, double below)
{
    const SquawkEntry &squawk = finding.squawk;
    const std::string &number =
        squawk.finding_number.empty() ? squawk.number : squawk.finding_number;
    const QString title = pages.wording().text("{0}  {1}", {number, squawk.title});
    constexpr double heading = points(60);
    double following = leastBelow(pages, finding, shelf);
    if (heading + following + below <= pages.body().height())
        following += below;
    if (isKnownToContents)
        pages.heading(1, title, following);
    else
        pages.smallHeading(title, following);
    drawTable(pages, tableOf(pages.wording(), finding));
    drawBeforeAndAfter(pages, finding, shelf);
}

} // namespace

QString verifiedIn(const Wording &words, const SquawkEntry &squawk)
{
    switch (squawk.state) {
    case SquawkEntry::State::Verified:
        return dateAndName(words, squawk.verified_on, squawk.verified_by);
    case SquawkEntry::State::Accepted:
        return words.text("accepted as it is: {0}", {squawk.accepted_basis}) + QLatin1Char('\n') +
               dateAndName(words, squawk.accepted_on, squawk.accepted_by);
    case SquawkEntry::State::Open:
        return words.text("not corrected");
    case SquawkEntry::State::Fixed:
        break;
    }
    return words.text("waits for: {0}", {nested(packet::inWords(squawk.verify_by))});
}

QString visitName(const Wording &words, const CorrectionsReport &report)
{
    const auto &visit = report.visit;
    QString name = words.sentence(packet::inWords(visit.kind));
    if (visit.held_on)
        name = words.text("{0} of {1}", {name.toStdString(), visit.held_on->text()});
    const std::string &number = visit.report_number.empty() ? visit.reference : visit.report_number;
    return number.empty() ? name : words.text("{0}, report {1}", {name.toStdString(), number});
}

void drawVisit(Pages &pages, const CorrectionsReport &report)
{
    const Wording &words = pages.wording();
    const auto &visit = report.visit;
    drawNotice(pages, standingIn(words, report),
               words.text("State of the records on {0}. This is the builder's record, not an "
                          "approval.",
                          {report.as_of.text()}));
    drawFacts(pages, {{words.sentence(packet::inWords(visit.visitor_role)), asIs(visit.inspector)},
                      {words.text("Builder"), asIs(report.aircraft.builder)},
                      {words.text("Asked for"), words.date(visit.asked_on)},
                      {words.text("Complete"), words.date(visit.completed_on)},
                      {words.text("Serial number"), asIs(report.aircraft.serial_number)},
                      {words.text("File of the authority"), asIs(report.aircraft.authority_file)}});
    if (report.verdicts.empty())
        return;
    Table table;
    table.columns = {{words.text("Closing"), 4},
                     {words.text("Hold point"), 3},
                     {words.text("Result"), 3},
                     {words.text("Remarks"), 3}};
    for (const auto &verdict : report.verdicts)
        table.rows.push_back({{{asIs(verdict.closing)},
                               {words.sentence(packet::inWords(verdict.kind))},
                               {words.text(packet::inWords(verdict.result))},
                               {asIs(verdict.remarks)}}});
    pages.smallHeading(words.text("Looked at"), leastHeightOf(table, pages.body().width()));
    drawTable(pages, table);
}

double heightOfFirstFinding(Pages &pages, const CorrectionsReport &report, PictureShelf &shelf)
{
    constexpr double heading = points(44);
    return report.findings.empty() ? lineHeight(Size::Body)
                                   : heading + leastBelow(pages, report.findings.front(), shelf);
}

void drawFindings(Pages &pages, const CorrectionsReport &report, PictureShelf &shelf,
                  bool areKnownToContents, double below)
{
    if (report.findings.empty())
        pages.text(pages.wording().text("No finding of this visit is on record."));
    for (std::size_t i = 0; i < report.findings.size(); ++i) {
        const bool isLastOfSeveral = i > 0 && i + 1 == report.findings.size();
        drawFinding(pages, report.findings[i], shelf, areKnownToContents,
                    isLastOfSeveral ? below : 0);
    }
}

int pictureCount(const CorrectionsReport &report)
{
    std::size_t count = 0;
    for (const auto &finding : report.findings)
        count += finding.before.size() + finding.after.size();
    return int(count);
}

} // namespace lastrivet::print
