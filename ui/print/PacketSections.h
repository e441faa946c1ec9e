// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Packet.h"
#include "ui/print/PictureShelf.h"

// The sections of a packet, in the order in which they are drawn.
namespace lastrivet::print {

class Pages;

/// What the small form goes without; nothing for the others.
void drawReduction(Pages &pages, const packet::Packet &packet, PictureShelf &shelf);
void drawFrontPages(Pages &pages, const packet::Packet &packet, PictureShelf &shelf);
/// On the front pages: what is asked of an inspector or adviser.
void drawAsked(Pages &pages, const packet::Packet &packet);
/// On the front pages: what is closed with gaps, waived, or not on record.
void drawGaps(Pages &pages, const packet::Packet &packet);
/// One closing: its state, what it hides, who signed, and when it was closed and opened.
void drawClosingRecord(Pages &pages, const packet::Standing &standing);
void drawReadiness(Pages &pages, const packet::Packet &packet);
/// The closings inside those of the packet: when each was closed, and who signed.
void drawWithin(Pages &pages, const packet::Packet &packet);
void drawPhotographs(Pages &pages, const packet::Packet &packet, PictureShelf &shelf);
void drawSquawks(Pages &pages, const packet::Packet &packet);
void drawDeviations(Pages &pages, const packet::Packet &packet);
void drawBulletins(Pages &pages, const packet::Packet &packet);
void drawFasteners(Pages &pages, const packet::Packet &packet);
void drawMeasurements(Pages &pages, const packet::Packet &packet);
void drawMaterials(Pages &pages, const packet::Packet &packet);
void drawTools(Pages &pages, const packet::Packet &packet);
void drawWorkLog(Pages &pages, const packet::Packet &packet);
void drawCheckLists(Pages &pages, const packet::Packet &packet);
void drawSheetsToSign(Pages &pages, const packet::Packet &packet);
void drawSignedSheets(Pages &pages, const packet::Packet &packet, PictureShelf &shelf);

/// A section of a packet that is left out where there is nothing of its kind.
template <class Entries>
void drawIfAny(Pages &pages, const packet::Packet &packet, const Entries &entries,
               void (*draw)(Pages &, const packet::Packet &))
{
    if (!entries.empty())
        draw(pages, packet);
}

} // namespace lastrivet::print
