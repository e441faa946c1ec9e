// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/MajorPortion.h"
#include "ui/print/PictureShelf.h"

// The major portion as a document says it, alone or in the file for the final inspection.
namespace lastrivet::print {

class Pages;

/// How the account stands and that the authority decides, what it rests on, and what is missing.
void drawPortionVerdict(Pages &pages, const packet::MajorPortion &form);
/// The form: tasks by section, the four columns with their sums, and what shows each task. `level`
/// is that of its heading.
void drawPortionForm(Pages &pages, const packet::MajorPortion &form, int level);
/// The list of the pictures that show the tasks.
void drawPortionEvidence(Pages &pages, const packet::MajorPortion &form, int level);
/// Of each task its first two photographs.
void drawPortionPhotos(Pages &pages, const packet::MajorPortion &form, PictureShelf &shelf);
/// How many photographs that is.
int portionPhotoCount(const packet::MajorPortion &form);

} // namespace lastrivet::print
