// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "core/records/Vocabulary.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Sheets to fill in by hand at the bench, with the columns of our records.
enum class BlankFormKind { Torque, Batches, Week, Findings };

struct BlankForm {
    BlankFormKind kind = BlankFormKind::Torque;
    packet::Aircraft aircraft;
    UnitSystem units = UnitSystem::Metric;
    /// Sheets of it.
    int sheets = 1;
};

/// What the form is called: "Torque list".
QString nameOf(const Wording &words, BlankFormKind kind);

/// Prints empty sheets; see `printDocument`.
std::optional<Printed> printBlankForm(const BlankForm &form, const Imprint &imprint,
                                      const Choices &choices, const std::filesystem::path &place,
                                      const OnPercent &onPercent = {});

} // namespace lastrivet::print
