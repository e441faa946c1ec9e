// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/SquawkEntry.h"
#include "ui/print/Table.h"
#include "ui/print/Wording.h"

#include <vector>

// Squawks as rows of a printed table: number with severity, what, found, correction, standing.
namespace lastrivet::print {

std::vector<Table::Column> squawkColumns(const Wording &words);
Table::Row squawkRow(const Wording &words, const packet::SquawkEntry &squawk);

/// Nothing is no line.
void addLine(QStringList &lines, const QString &line);
/// "14 Mar 2026, A. Builder": a day and a name, as far as they are known.
QString dateAndName(const Wording &words, const std::optional<Moment> &date,
                    const std::string &name);
/// "Photos 3, 4"; empty for none.
QString photosIn(const Wording &words, const std::vector<int> &numbers);

} // namespace lastrivet::print
