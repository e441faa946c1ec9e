// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/today/AtPart.h"
#include "ui/widgets/RowListModel.h"

#include <QString>

#include <vector>

namespace lastrivet::ui {

// What there is to do at a part, as rows of the bench view's lists.

std::vector<ListRow> benchStepRows(const today::AtPart &here, const Records &records);
std::vector<ListRow> benchFastenerRows(const today::AtPart &here, const Records &records);
std::vector<ListRow> benchCheckRows(const today::AtPart &here, const Records &records);
std::vector<ListRow> benchClosingRows(const today::AtPart &here, const Records &records,
                                      const readiness::Answer &answer);
/// Parts to choose from.
std::vector<ListRow> benchPartRows(const std::vector<Id<Component>> &parts, const Records &records,
                                   Id<Component> atWork);
/// The limits and the unit of a torque: "20 to 25 in-lb"; empty without a limit.
QString torqueWords(const Fastener &fastener);

} // namespace lastrivet::ui
