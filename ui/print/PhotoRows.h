// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Photo.h"
#include "ui/print/PictureShelf.h"

#include <vector>

namespace lastrivet::print {

class Pages;

/// Photographs beside a text, three in a row, each with number, day, part and the first lines of
/// its caption. A picture that cannot be had leaves a framed note in its place.
void drawPhotoRows(Pages &pages, const std::vector<packet::Photo> &photos, PictureShelf &shelf);

} // namespace lastrivet::print
