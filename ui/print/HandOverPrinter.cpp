// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HandOverPrinter.h"

#include "ui/print/AsBuiltSections.h"
#include "ui/print/Cautions.h"
#include "ui/print/PacketSections.h"
#include "ui/print/Pages.h"
#include "ui/print/WeightSection.h"

namespace lastrivet::print {

namespace {

void drawBook(Pages &pages, const packet::HandOver &book, PictureShelf &shelf)
{
    const packet::Packet &whole = book.whole;
    drawBookFront(pages, book);
    drawParts(pages, book);
    drawClosings(pages, book);
    drawIfAny(pages, whole, whole.deviations, drawDeviations);
    drawIfAny(pages, whole, whole.bulletins, drawBulletins);
    drawIfAny(pages, whole, whole.squawks, drawSquawks);
    drawIfAny(pages, whole, whole.fasteners, drawFasteners);
    drawIfAny(pages, whole, whole.measurements, drawMeasurements);
    drawIfAny(pages, whole, whole.materials, drawMaterials);
    drawIfAny(pages, whole, whole.tools, drawTools);
    drawEquipment(pages, book);
    if (book.hasWeight())
        drawWeight(pages, book.weight);
    drawLogSummary(pages, book);
    if (!whole.photos.empty())
        drawPhotographs(pages, whole, shelf);
    drawCautions(pages, whole.cautions);
}

} // namespace

std::optional<Printed> printHandOver(const packet::HandOver &book, const Imprint &imprint,
                                     const Pictures &pictures, const Choices &choices,
                                     const std::filesystem::path &place, const OnPercent &onPercent)
{
    Document document =
        documentAbout(book.whole.front.aircraft, choices.wording.text(book.whole.title));
    document.picture_count = int(book.whole.photos.size());
    document.sections = {[&](Pages &pages, PictureShelf &shelf) { drawBook(pages, book, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
