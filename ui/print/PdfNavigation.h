// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QPDF;

namespace lastrivet::print {

struct PdfFinish;

/// One bookmark for each heading, those of level 1 folded below the section before them.
void addBookmarks(QPDF &pdf, const PdfFinish &finish);
/// The places that lead to headings.
void addLinks(QPDF &pdf, const PdfFinish &finish);

} // namespace lastrivet::print
