// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "core/packet/ShelfLabel.h"
#include "ui/print/Document.h"
#include "ui/print/LabelGrid.h"

#include <vector>

namespace lastrivet::print {

/// What shelf labels are printed from.
struct LabelSheet {
    packet::Aircraft aircraft;
    std::vector<packet::ShelfLabel> labels;
    LabelGrid grid;
    /// Labels of the first sheet that are used already.
    int used = 0;
};

/// Sheets of labels, each with what it names in large letters and a code that the search of the
/// program finds. The grid decides on the paper. Throws a `Fault` when there is no label; else see
/// `printDocument`.
std::optional<Printed> printLabels(const LabelSheet &sheet, const Imprint &imprint,
                                   const Choices &choices, const std::filesystem::path &place,
                                   const OnPercent &onPercent = {});

} // namespace lastrivet::print
