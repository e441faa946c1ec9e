// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/MajorPortionPrinter.h"

#include "ui/print/AircraftFacts.h"
#include "ui/print/Cautions.h"
#include "ui/print/MajorPortionSections.h"
#include "ui/print/Pages.h"
#include "ui/print/Table.h"
#include "ui/print/Title.h"

namespace lastrivet::print {

namespace {

using packet::MajorPortion;

void drawSignature(Pages &pages)
{
    const Wording &words = pages.wording();
    Table table;
    table.has_grid = true;
    table.columns = {{QString(), 2, false, true},
                     {words.text("Name"), 4, false, true},
                     {words.text("Signature"), 4, false, true},
                     {words.text("Date"), 2, false, true}};
    table.rows.push_back(
        {{{words.text("Builder")}, {}, {}, {}}, Table::Bar::None, false, points(36)});
    pages.smallHeading(words.text("Signed"), points(70));
    drawTable(pages, table);
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
