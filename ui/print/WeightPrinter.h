// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"
#include "ui/print/Document.h"

namespace lastrivet::print {

/// Writes the weight and balance report as PDF; see `printDocument`.
std::optional<Printed> printWeightReport(const packet::WeightReport &report, const Imprint &imprint,
                                         const Choices &choices, const std::filesystem::path &place,
                                         const OnPercent &onPercent = {});

} // namespace lastrivet::print
