// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/WeightReport.h"
#include "ui/workshop/FigureModel.h"

namespace lastrivet::ui {

/// Equipment fitted and removed since the weighing, deviations with a weight, bulletins complied
/// with since.
FigureTable changesTable(const packet::WeightReport &report);

/// The empty aeroplane, each loading and both extremes, as the picture has them; what lies outside
/// the limits stands out.
FigureTable loadingTable(const packet::WeightReport &report);

} // namespace lastrivet::ui
