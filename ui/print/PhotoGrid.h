// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Photo.h"
#include "ui/print/PictureShelf.h"

#include <QString>

#include <vector>

namespace lastrivet::print {

class Pages;
class Wording;

/// "14 Mar 2026 16:10", or that it was taken in on a day where nobody knows when it was taken;
/// empty when neither is known.
QString photoDay(const Wording &words, const packet::Photo &photo);
/// "Photo 3 · 14 Mar 2026 · Left wing".
QString photoTitle(const Wording &words, const packet::Photo &photo);

/// Two rows of photographs a page, each with number, date, part and caption; two upright ones share
/// a row. A picture that cannot be had leaves a framed note in its place.
void drawPhotos(Pages &pages, const std::vector<packet::Photo> &photos, PictureShelf &shelf);

/// Height of the first pair that `drawSideBySide` draws of these.
double heightOfFirstPair(Pages &pages, const std::vector<packet::Photo> &left,
                         const std::vector<packet::Photo> &right, PictureShelf &shelf);
/// Height of number, date, part and caption below a photograph of such a pair.
double heightOfWordsBelow(const Pages &pages, const packet::Photo &photo);
/// Photographs in two columns, one row a pair. Where the sides are before and after, one that has
/// none says so.
void drawSideBySide(Pages &pages, const std::vector<packet::Photo> &left,
                    const std::vector<packet::Photo> &right, PictureShelf &shelf,
                    bool areBeforeAndAfter);

} // namespace lastrivet::print
