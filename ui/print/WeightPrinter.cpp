// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/WeightPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/ByHand.h"
#include "ui/print/Cautions.h"
#include "ui/print/Measures.h"
#include "ui/print/Pages.h"
#include "ui/print/Title.h"
#include "ui/print/WeightSection.h"

namespace lastrivet::print {

namespace {

void drawSignature(Pages &pages)
{
    const Wording &words = pages.wording();
    drawTableToSign(pages, words.text("Weighed and worked out by"),
                    {{words.text("Name"), 4},
                     {words.text("Credential"), 3},
                     {words.text("Signature"), 4},
                     {words.text("Date"), 2}},
                    {QString()});
}

void drawReport(Pages &pages, const packet::WeightReport &report)
{
    const Wording &words = pages.wording();
    drawTitle(pages, words.text("Weight and balance report"), aircraftName(report.aircraft),
              words.text("As the records say on {0}", {report.as_of->text()}));
    drawAircraft(pages, report.aircraft);
    drawWeight(pages, report);
    constexpr double signature = points(110);
    pages.need(signature + heightOfCautions(pages, report.cautions, About::Figures));
    drawSignature(pages);
    drawCautions(pages, report.cautions, About::Figures);
}

} // namespace

std::optional<Printed> printWeightReport(const packet::WeightReport &report, const Imprint &imprint,
                                         const Choices &choices, const std::filesystem::path &place,
                                         const OnPercent &onPercent)
{
    Document document =
        documentAbout(report.aircraft, choices.wording.text("Weight and balance report"));
    document.sections = {[&](Pages &pages, PictureShelf &) { drawReport(pages, report); }};
    return printDocument(document, imprint, {}, choices, place, onPercent);
}

} // namespace lastrivet::print
