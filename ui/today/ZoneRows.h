// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/airframe/Airframe.h"
#include "ui/widgets/ZoneModel.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

// The aeroplane's zones in words.

QString zoneName(airframe::Zone zone);
QString drawingName(airframe::AircraftKind kind);
/// Every zone with its state, its part and what to begin with.
std::vector<ZoneRow> zoneRows(const airframe::Airframe &drawn, const Records &records,
                              const readiness::Answer &answer);

} // namespace lastrivet::ui
