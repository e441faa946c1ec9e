// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet::print {

class Pages;

/// "Contents": sections and what is below them, with dotted lines to their page numbers; each line
/// leads there. A long list stands in two columns.
void drawContents(Pages &pages);

} // namespace lastrivet::print
