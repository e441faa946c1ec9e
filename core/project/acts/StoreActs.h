// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/project/Edit.h"

#include <optional>
#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// Why a line cannot be counted so: a count is below zero, or more are damaged than came.
std::optional<Message> whyNotCount(std::int64_t received, std::int64_t damaged);
/// What came of a line. A line that was counted before keeps its day.
void countLine(Edit &edit, Id<PartLine> line, std::int64_t received, std::int64_t damaged);
/// Lines came as the list says; those that were counted before stay as they are, and where only the
/// day is missing, the number that is written down stays.
void countAsListed(Edit &edit, const std::vector<Id<PartLine>> &lines);
/// Lines were not counted after all.
void uncount(Edit &edit, const std::vector<Id<PartLine>> &lines);

/// A lot of material from a packing line.
Id<MaterialLot> lotFrom(Edit &edit, Id<PartLine> line);
/// What lines cost by their prices, one expense per currency named `what`, on the day they were
/// ordered, else came, else today. Says which line has no price or currency, that one is gone, and
/// that it is too much.
Result<std::vector<Expense>, Message> expensesFor(const Records &records,
                                                  const std::vector<Id<PartLine>> &lines,
                                                  std::string_view what, Moment today);

/// A tool was calibrated; it is one that needs that from now on.
void calibrate(Edit &edit, Id<Tool> tool, const Tool::Calibration &calibration);
/// Takes the paper as the certificate of the tool's calibration in this place of its list.
void attachCertificate(Edit &edit, Id<Tool> tool, std::size_t calibration, Id<Media> paper);
void attachCertificate(Edit &edit, Id<MaterialLot> lot, Id<Media> paper);
void attachReceipt(Edit &edit, Id<Expense> expense, Id<Media> paper);

} // namespace lastrivet::acts
