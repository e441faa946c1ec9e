// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

/// What people do with a record of the stores, beside writing into its fields.
namespace lastrivet::ui::storeroom {

std::span<const SectionAct> lineActs();
std::span<const SectionAct> lotActs();
std::span<const SectionAct> toolActs();
std::span<const SectionAct> expenseActs();

void attachToLot(Edit &edit, std::int64_t id, Id<Media> paper);
/// The certificate of the tool's last calibration.
void attachToTool(Edit &edit, std::int64_t id, Id<Media> paper);
void attachToExpense(Edit &edit, std::int64_t id, Id<Media> paper);
void attachToLine(Edit &edit, std::int64_t id, Id<Media> picture);

} // namespace lastrivet::ui::storeroom
