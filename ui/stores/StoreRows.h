// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/stores/Delivery.h"
#include "core/stores/Lots.h"
#include "ui/widgets/RowListModel.h"

// What stands beside the lists of the stores, row by row.
namespace lastrivet::ui {

class Session;

/// "38 of 40 lines are as listed; 1 missing, 1 damaged."
QString shipmentWords(const stores::Shipment &shipment);
QString allShipmentsWords(const std::vector<stores::Shipment> &shipments);

/// The lines that are not here, with the first thing that waits for each.
std::vector<ListRow> waitRows(const std::vector<stores::Wait> &waits, const Records &records,
                              const readiness::Answer &answer);
/// The steps and closings that wait for one line.
std::vector<ListRow> waitingRows(const stores::Wait &wait, const Records &records,
                                 const readiness::Answer &answer);

/// What cures, with the closings that it keeps open.
std::vector<ListRow> cureRows(const Session &session);
/// What a lot was used for.
std::vector<ListRow> useRows(const Session &session, Id<MaterialLot> lot);

std::vector<ListRow> calibrationRows(const Session &session, Id<Tool> tool);
/// What was torqued or measured while the tool was not in calibration.
std::vector<ListRow> outsideRows(const Session &session, Id<Tool> tool);

} // namespace lastrivet::ui
