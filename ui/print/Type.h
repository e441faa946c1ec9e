// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

// The typographic scale: 10 pt, and steps of a quarter up and down. Figures of the family are all
// of one width, so that numbers stand in columns.
namespace lastrivet::print {

/// The last is for what is read from across the workshop.
enum class Size { Small, Body, Subheading, Heading, Title, Poster };

QFont font(Size size, bool isBold = false);
/// Distance between two lines, in print units.
double lineHeight(Size size);
/// Throws a `Fault` when the family is not installed: the pages would come out without text. Asked
/// before the journal says that something is printed, too.
void requireFonts();

} // namespace lastrivet::print
