// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"
#include "ui/widgets/RecordForm.h"

#include <string_view>
#include <vector>

/// Which fields of a section's record are edited beneath its list, in their order.
namespace lastrivet::ui::sections {

using Rows = std::vector<RecordForm::Row>;

Rows stepForm();
Rows fastenerForm();
Rows measurementForm();
Rows deviationForm();
Rows bulletinForm();
Rows partLineForm();

/// Who writes how many came, or are damaged, has counted the line; as in the table, one that is
/// damaged and was not counted came as listed.
void countWhatIsTyped(const Edit &edit, std::string_view field, void *line);
/// Why a packing line cannot have these counts; empty when it can.
QString whyNotCounted(const void *line);

} // namespace lastrivet::ui::sections
