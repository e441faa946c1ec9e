// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/widgets/RecordForm.h"

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

} // namespace lastrivet::ui::sections
