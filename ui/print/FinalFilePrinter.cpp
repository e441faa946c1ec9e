// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/FinalFilePrinter.h"

#include "core/base/Tongue.h"
#include "ui/print/AircraftFacts.h"
#include "ui/print/AsBuiltSections.h"
#include "ui/print/Cautions.h"
#include "ui/print/Contents.h"
#include "ui/print/CorrectionsSections.h"
#include "ui/print/Facts.h"
#include "ui/print/MajorPortionSections.h"
#include "ui/print/PacketSections.h"
#include "ui/print/Pages.h"
#include "ui/print/PartTable.h"
#include "ui/print/Title.h"
#include "ui/print/WeightSection.h"

#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet::print {

namespace {

using packet::FinalFile;

using Counts = std::vector<std::pair<std::size_t, std::string_view>>;

/// A sentence for each count that is not 0.
QStringList counted(const Wording &words, const Counts &counts)
{
    QStringList sentences;
    for (const auto &[count, pattern] : counts) {
        if (count > 0)
            sentences << words.text(pattern, {words.count(count)});
    }
    return sentences;
}

/// What stands against weight and balance.
QStringList notWithinWeight(const Wording &words, const packet::WeightReport &report)
{
    QStringList sentences;
    if (report.refusal)
        sentences << words.text(*report.refusal);
    if (report.no_extremes)
        sentences << words.text(*report.no_extremes);
    return sentences +
           counted(words,
                   {{report.casesOutside(), "Loadings outside the limits: {0}."},
                    {report.extremesOutside(), "Extremes of loading outside the limits: {0}."},
                    {report.builtSinceWeighing(), "Deviations that change the weight, built since "
                                                  "the weighing and not in it: {0}."},
                    {report.not_in_sum.size(), "Equipment fitted or removed since the weighing, "
                                               "without weight or arm: {0}."}});
}

/// What is not complete, each only where there is any of it.
QStringList notComplete(const Wording &words, const FinalFile &file)
{
    const Counts counts{
        {file.missingDocuments(), "Required documents that are not here: {0}."},
        {file.differences.size(), "Entries of papers that do not agree: {0}."},
        {file.openFindings(), "Findings of inspections neither verified nor accepted: {0}."},
        {file.openClosings(), "Closings that are not closed: {0}."},
        {file.closedWithGaps(), "Closings closed with gaps and accepted by nobody: {0}."},
        {file.built.whole.squawks.size(), "Squawks that are open: {0}."},
        {file.openDeviations(), "Deviations not decided, or rejected and still built: {0}."},
        {file.openBulletins(), "Bulletins not complied with: {0}."},
        {file.major_portion.account.evidence_gaps.size(),
         "Tasks of the major portion without a picture: {0}."},
    };
    return counted(words, counts) + notWithinWeight(words, file.weight);
}

void drawLeftOut(Pages &pages, const FinalFile &file)
{
    const Wording &words = pages.wording();
    const packet::Packet &built = file.built.whole;
    drawNothingOf(pages,
                  {{file.inspections.empty(), words.text("inspections")},
                   {file.built.equipment.empty(), words.text("equipment")},
                   {!file.weight.weighing, words.text("weighings")},
                   {file.weight.cases.empty(), words.text("loadings")},
                   {!file.weight.limits, words.text("limits of weight and centre of gravity")},
                   {file.major_portion.tasks.empty(), words.text("tasks of the major portion")},
                   {file.built.hours.empty(), words.text("log entries")},
                   {built.deviations.empty(), words.text("deviations from the drawings")},
                   {built.bulletins.empty(), words.text("bulletins")}});
}

void drawFront(Pages &pages, const FinalFile &file)
{
    const Wording &words = pages.wording();
    drawTitle(pages, words.text("File for the final inspection"), aircraftName(file.aircraft),
              words.text("As the records say on {0}", {file.built.whole.as_of.text()}));
    const QStringList open = notComplete(words, file);
    drawNotice(
        pages,
        words.text(open.isEmpty() ? "Nothing of this kind is open on record" : "Not complete"),
        open.isEmpty()
            ? words.text("Every required document is here, findings are verified or "
                         "accepted, closings are closed and none with gaps, deviations are "
                         "decided, bulletins complied with, the aeroplane is weighed, and no "
                         "loading on record lies outside the limits. Only the inspector's "
                         "own look tells whether the work is right.")
            : open.join(QLatin1Char('\n')));
    drawAircraft(pages, file.aircraft);
    drawLeftOut(pages, file);
    drawContents(pages);
}

void drawDocuments(Pages &pages, const FinalFile &file)
{
    const Wording &words = pages.wording();
    Table table;
    table.columns = {{words.text("Document"), 5}, {words.text("Needed"), 2.6},
                     {words.text("State"), 3.4},  {words.text("Number"), 2.6},
                     {words.text("Edition"), 2},  {words.text("Scans"), 1, true}};
    for (const FinalFile::Document &document : file.documents) {
        const bool isHere = document.standing == certificate::PaperState::Here;
        table.rows.push_back(
            {{{words.text(document.title)},
              {document.need ? words.sentence(certificate::inWords(*document.need)) : QString()},
              {words.sentence(document.state), Mark::None,
               !isHere && document.need == Need::Required},
              {asIs(document.number)},
              {asIs(document.edition)},
              {document.scans > 0 ? QString::number(document.scans) : QString()}}});
    }
    drawSection(pages, words.text("Documents for the certificate"), table,
                words.text("No document is on record."));
    if (file.differences.empty())
        return;
    Table differences;
    differences.columns = {{words.text("Document"), 3}, {words.text("Does not agree"), 7}};
    for (const FinalFile::Difference &difference : file.differences)
        differences.rows.push_back({{{words.text(difference.record), Mark::None, true},
                                     {words.sentence(difference.what)}}});
    pages.smallHeading(words.text("Papers that do not agree"),
                       leastHeightOf(differences, pages.body().width()));
    drawTable(pages, differences);
}

void drawInspections(Pages &pages, const FinalFile &file, PictureShelf &shelf)
{
    if (file.inspections.empty())
        return;
    const Wording &words = pages.wording();
    pages.heading(0, words.text("Inspections, findings and corrections"), points(230));
    for (const packet::CorrectionsReport &report : file.inspections) {
        pages.heading(1, visitName(words, report), points(140));
        drawVisit(pages, report);
        if (!report.findings.empty())
            drawFindings(pages, report, shelf, false);
    }
}

void drawMajorPortion(Pages &pages, const FinalFile &file)
{
    if (file.major_portion.tasks.empty())
        return;
    pages.heading(0, pages.wording().text("Major portion"), points(120));
    drawPortionVerdict(pages, file.major_portion);
    drawPortionForm(pages, file.major_portion, 1);
    drawPortionEvidence(pages, file.major_portion, 1);
}

void drawAll(Pages &pages, const FinalFile &file, PictureShelf &shelf)
{
    const packet::Packet &built = file.built.whole;
    drawFront(pages, file);
    drawDocuments(pages, file);
    drawInspections(pages, file, shelf);
    pages.heading(0, pages.wording().text("Closings"), points(160));
    drawWhatIsClosed(pages, file.built);
    drawWhoSigned(pages, file.built);
    drawIfAny(pages, built, built.squawks, drawSquawks);
    drawWeight(pages, file.weight);
    drawMajorPortion(pages, file);
    drawLogSummary(pages, file.built);
    drawIfAny(pages, built, built.deviations, drawDeviations);
    drawIfAny(pages, built, built.bulletins, drawBulletins);
    drawCautions(pages, built.cautions);
}

} // namespace

std::optional<Printed> printFinalFile(const FinalFile &file, const Imprint &imprint,
                                      const Pictures &pictures, const Choices &choices,
                                      const std::filesystem::path &place,
                                      const OnPercent &onPercent)
{
    Document document =
        documentAbout(file.aircraft, choices.wording.text("File for the final inspection"));
    for (const packet::CorrectionsReport &report : file.inspections)
        document.picture_count += pictureCount(report);
    document.sections = {[&](Pages &pages, PictureShelf &shelf) { drawAll(pages, file, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
