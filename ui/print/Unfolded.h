// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/Table.h"

namespace lastrivet::print {

/// The table as it is drawn in so wide a place: a text that is too long for its column begins there
/// and stands whole below its row, across the table. One that is filled in by hand stays as it is.
Table unfolded(const Table &table, double width);

} // namespace lastrivet::print
