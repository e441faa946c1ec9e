// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace lastrivet::ui {

/// Height of a row in every list of the program.
int rowHeight();
/// Rows for fingers and gloves; chosen before windows are built.
void setTallRows(bool areTall);

} // namespace lastrivet::ui
