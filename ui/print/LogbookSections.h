// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Logbook.h"
#include "ui/print/PictureShelf.h"
#include "ui/print/Wording.h"

// The sections of the builder's log, in the order in which they are drawn.
namespace lastrivet::print {

class Pages;

/// "March 2026" in a log by date; the part in a log by part.
QString chapterTitle(const Wording &words, const packet::Logbook::Chapter &chapter);

/// Which log of which aircraft, its sums in all, and where what stands.
void drawLogbookFront(Pages &pages, const packet::Logbook &log);
/// Sums by month, part, kind of work and person.
void drawLogbookSums(Pages &pages, const packet::Logbook &log);
/// The entries and photographs, chapter by chapter.
void drawLogbookChapters(Pages &pages, const packet::Logbook &log, PictureShelf &shelf);

} // namespace lastrivet::print
