// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MajorPortionPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/ByHand.h"
#include "ui/print/Cautions.h"
#include "ui/print/MajorPortionSections.h"
#include "ui/print/Pages.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

using packet::MajorPortion;

void drawSignature(Pages &pages)
{
    const Wording &words = pages.wording();
    drawTableToSign(pages, words.text("Signed"),
                    {{QString(), 2},
                     {words.text("Name"), 4},
                     {words.text("Signature"), 4},
                     {words.text("Date"), 2}},
                    {words.text("Builder")});
}

void drawAll(Pages &pages, const MajorPortion &form, PictureShelf &shelf)
{
    const Wording &words = pages.wording();
    drawTitle(pages, words.text("Major portion"), aircraftName(form.aircraft),
              words.text("As the records say on {0}", {form.as_of.text()}));
    drawAircraft(pages, form.aircraft);
    drawPortionVerdict(pages, form);
    drawPortionForm(pages, form, 0);
    drawSignature(pages);
    drawPortionEvidence(pages, form, 0);
    drawPortionPhotos(pages, form, shelf);
    drawCautions(pages, form.cautions, About::Figures);
}

} // namespace

std::optional<Printed> printMajorPortion(const MajorPortion &form, const Imprint &imprint,
                                         const Pictures &pictures, const Choices &choices,
                                         const std::filesystem::path &place,
                                         const OnPercent &onPercent)
{
    Document document = documentAbout(form.aircraft, choices.wording.text("Major portion"));
    document.picture_count = portionPhotoCount(form);
    document.sections = {[&](Pages &pages, PictureShelf &shelf) { drawAll(pages, form, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
