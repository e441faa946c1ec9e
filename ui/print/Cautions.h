// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

#include <vector>

namespace lastrivet::print {

class Pages;

/// The section that ends every document: the cautions of the rule profile, and in any case that
/// this is the builder's record and nobody's approval.
void drawCautions(Pages &pages, const std::vector<Profile::Caution> &cautions);

/// The one sentence of it that goes on every sheet, small.
void drawOwnCaution(Pages &pages);

} // namespace lastrivet::print
