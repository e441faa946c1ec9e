// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/CorrectionsReport.h"
#include "ui/print/PictureShelf.h"

#include <QString>

// What a document says of one inspection.
namespace lastrivet::print {

class Pages;
class Wording;

/// "Pre-cover inspection of 14 Mar 2026, report 7".
QString visitName(const Wording &words, const packet::CorrectionsReport &report);
/// Who verified or accepted a squawk and when, or who has to.
QString verifiedIn(const Wording &words, const packet::SquawkEntry &squawk);
/// How its findings stand, who came when, and what was said of each hold point.
void drawVisit(Pages &pages, const packet::CorrectionsReport &report);
/// As much of the findings as must stand on one page with a heading above them.
double heightOfFirstFinding(Pages &pages, const packet::CorrectionsReport &report,
                            PictureShelf &shelf);
/// Each finding with its correction, and pictures before and after; the last of several goes to the
/// next page with `below` of what follows it, so that this does not stand there alone.
void drawFindings(Pages &pages, const packet::CorrectionsReport &report, PictureShelf &shelf,
                  bool areKnownToContents, double below = 0);
/// Photographs in it.
int pictureCount(const packet::CorrectionsReport &report);

} // namespace lastrivet::print
