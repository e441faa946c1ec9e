// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"

namespace lastrivet::print {

class Pages;

/// Weight and balance as sections of a document: the weighing, equipment, loading with its drawing.
void drawWeight(Pages &pages, const packet::WeightReport &report);

} // namespace lastrivet::print
