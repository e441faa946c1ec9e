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
};

/// The section that ends every document: the cautions of the rule profile, and in any case that
/// this is the builder's record and nobody's approval.
void drawCautions(Pages &pages, const std::vector<Profile::Caution> &cautions,
                  About about = About::Structure);

/// The one sentence on a sheet that is still to be filled in, small.
void drawFormCaution(Pages &pages);

} // namespace lastrivet::print
