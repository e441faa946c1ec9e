// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/PacketPrinter.h"

#include "ui/print/Cautions.h"
#include "ui/print/PacketSections.h"
#include "ui/print/Pages.h"

namespace lastrivet::print {

namespace {

/// A sheet that fills its page leaves no room for the cautions: rather than alone behind it they
/// stand before it, where the list ends.
bool drawCautionsBefore(Pages &pages, const packet::Packet &packet)
{
    const bool stoodAlone = pages.known().before_cautions && packet.signed_sheets.empty();
    if (!stoodAlone ||
        pages.spaceLeft() < heightOfCautions(pages, packet.cautions, About::Structure))
        return false;
    drawCautions(pages, packet.cautions);
    pages.endAsUsual();
    return true;
}

void drawPacket(Pages &pages, const packet::Packet &packet, PictureShelf &shelf)
{
    drawFrontPages(pages, packet, shelf);
    drawReadiness(pages, packet);
    drawWithin(pages, packet);
    drawPhotographs(pages, packet, shelf);
    drawSquawks(pages, packet);
    drawDeviations(pages, packet);
    drawBulletins(pages, packet);
    drawFasteners(pages, packet);
    drawMeasurements(pages, packet);
    drawMaterials(pages, packet);
    drawTools(pages, packet);
    drawWorkLog(pages, packet);
    drawCheckLists(pages, packet);
    const bool areBefore = drawCautionsBefore(pages, packet);
    drawSheetsToSign(pages, packet);
    drawSignedSheets(pages, packet, shelf);
    if (!areBefore)
        drawCautions(pages, packet.cautions);
}

} // namespace

std::optional<Printed> printPacket(const packet::Packet &packet, const Imprint &imprint,
                                   const Pictures &pictures, const Choices &choices,
                                   const std::filesystem::path &place, const OnPercent &onPercent)
{
    Document document = documentAbout(packet.front.aircraft, choices.wording.text(packet.title));
    document.picture_count = int(packet.photos.size() + packet.signed_sheets.size());
    document.sections = {
        [&](Pages &pages, PictureShelf &shelf) { drawPacket(pages, packet, shelf); }};
    return printDocument(document, imprint, pictures, choices, place, onPercent);
}

} // namespace lastrivet::print
