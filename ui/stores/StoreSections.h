// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/parts/PartSection.h"

/// The lists of the stores: what they show, what can be done with a record, and new ones.
namespace lastrivet::ui::storeroom {

const PartSection &lineSection();
const PartSection &lotSection();
const PartSection &toolSection();
const PartSection &expenseSection();

} // namespace lastrivet::ui::storeroom
