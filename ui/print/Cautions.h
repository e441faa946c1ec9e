// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

#include <vector>

namespace lastrivet::print {

class Pages;

/// What a document speaks of: a caution stands only where it matters.
enum class About {
    Structure,
    /// Hours, weights, shares or changes: no closing and nothing that cures.
    Figures,
    /// What was found, corrected or touched: besides, no limit and no rule that is quoted.
    Findings,
    /// The same with limits beside it.
    FindingsAndLimits,
};

/// The section that ends every document by which somebody else decides: the cautions of the rule
/// profile, and in any case that this is the builder's record and nobody's approval. The builder's
/// log says that on its front page, tags and blank forms in a line of theirs, labels nowhere.
void drawCautions(Pages &pages, const std::vector<Profile::Caution> &cautions,
                  About about = About::Structure);
/// The least room that the section takes.
double heightOfCautions(const Pages &pages, const std::vector<Profile::Caution> &cautions,
                        About about);

/// The same cautions as small lines without a heading, at the end of what must stay on one page.
void drawCautionLines(Pages &pages, const std::vector<Profile::Caution> &cautions, About about);
double heightOfCautionLines(const Pages &pages, const std::vector<Profile::Caution> &cautions,
                            About about);

/// The one sentence on a sheet that is still to be filled in, small.
void drawFormCaution(Pages &pages);

} // namespace lastrivet::print
