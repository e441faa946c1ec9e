// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/HandOver.h"

#include <QString>

#include <vector>

// The sections of a hand-over book that no packet has.
namespace lastrivet::print {

class Pages;

/// What a section is about, in words of a list, and whether it has anything to say.
struct SectionKind {
    bool is_empty;
    QString name;
};

/// Names those kinds that are empty, whose sections are left out.
void drawNothingOf(Pages &pages, const std::vector<SectionKind> &kinds);
/// Which aircraft, how long it took, what is closed, what is not on record, and the contents.
void drawBookFront(Pages &pages, const packet::HandOver &book);
void drawParts(Pages &pages, const packet::HandOver &book);
/// Every closing in a line: its state, when and by whom it was closed.
void drawWhatIsClosed(Pages &pages, const packet::HandOver &book);
/// Every closing with its hold points: who signed, and who accepted it late.
void drawWhoSigned(Pages &pages, const packet::HandOver &book);
/// Every closing with its hold points and its history.
void drawClosings(Pages &pages, const packet::HandOver &book);
void drawEquipment(Pages &pages, const packet::HandOver &book);
void drawLogSummary(Pages &pages, const packet::HandOver &book);

} // namespace lastrivet::print
