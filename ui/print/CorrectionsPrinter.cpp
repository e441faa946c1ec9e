// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/CorrectionsPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/ByHand.h"
#include "ui/print/Cautions.h"
#include "ui/print/CorrectionsSections.h"
#include "ui/print/Pages.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

using packet::CorrectionsReport;

void drawHead(Pages &pages, const CorrectionsReport &report)
{
    const Wording &words = pages.wording();
    print::drawTitle(pages, words.text("Corrections report"), aircraftName(report.aircraft),
                     visitName(words, report));
}

/// A line each for whoever corrected and whoever verified.
void drawSignatures(Pages &pages)
{
    const Wording &words = pages.wording();
    drawTableToSign(pages, words.text("Signed"),
                    {{QString(), 2},
                     {words.text("Name and number"), 4},
                     {words.text("Signature"), 4},
                     {words.text("Date"), 2}},
                    {words.text("Builder"), words.text("Inspector or adviser")});
}

void drawAll(Pages &pages, const CorrectionsReport &report, PictureShelf &shelf)
{
    drawHead(pages, report);
    drawVisit(pages, report);
    pages.heading(0, pages.wording().text("Findings and corrections"),
                  heightOfFirstFinding(pages, report, shelf));
    constexpr double signatures = points(150);
    drawFindings(pages, report, shelf, true,
                 signatures + heightOfCautions(pages, report.cautions, About::Findings));
    drawSignatures(pages);
    drawCautions(pages, report.cautions, About::Findings);
}

} // namespace

std::optional<Printed> printCorrections(const packet::CorrectionsReport &report,
                                        const Imprint &imprint, const Pictures &pictures,
                                        const Choices &choices, const std::filesystem::path &place,
                                        const OnPercent &onPercent)
{
    const Wording &words = choices.wording;
    const QString title = words.text("{0}: {1}", {words.text("Corrections report").toStdString(),
                                                  visitName(words, report).toStdString()});
    Document document = documentAbout(report.aircraft, title);
    document.picture_count = pictureCount(report);
    document.sections = {[&](Pages &pages, PictureShelf &shelf) { drawAll(pages, report, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
