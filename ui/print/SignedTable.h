// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Standing.h"
#include "ui/print/Table.h"

#include <vector>

namespace lastrivet::print {

class Wording;

/// How a hold point stands: who signed, with number, date and sheet, or why nobody has to.
Table::Cell standingOf(const Wording &words, const packet::Standing::HoldPointLine &line);
/// Each closing with its state and day of closing; below it its hold points and late acceptances,
/// with who signed them.
Table signedTable(const Wording &words, const std::vector<packet::Standing> &standings);

} // namespace lastrivet::print
