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
/// Records how many of a line came. A line that was counted before keeps its day.
void countLine(Edit &edit, Id<PartLine> line, std::int64_t received, std::int64_t damaged);
/// Records that lines came complete. Lines that were counted before stay as they are; one that has
/// a number but no day keeps its number.
void countAsListed(Edit &edit, const std::vector<Id<PartLine>> &lines);
/// Takes the count of lines back.
void uncount(Edit &edit, const std::vector<Id<PartLine>> &lines);

/// Adds a lot of material from a packing line.
Id<MaterialLot> lotFrom(Edit &edit, Id<PartLine> line);
/// The cost of lines as expenses named `what`, one per currency, on the day they were ordered, else
/// came, else today. The reason says which line has no price or currency or is gone, or that the
/// sum is too large.
Result<std::vector<Expense>, Message> expensesFor(const Records &records,
                                                  const std::vector<Id<PartLine>> &lines,
                                                  std::string_view what, Moment today);

/// Records a calibration; the tool needs calibration from now on.
void calibrate(Edit &edit, Id<Tool> tool, const Tool::Calibration &calibration);
/// Makes the document the certificate of the tool's calibration at this position of its list.
void attachCertificate(Edit &edit, Id<Tool> tool, std::size_t calibration, Id<Media> paper);
void attachCertificate(Edit &edit, Id<MaterialLot> lot, Id<Media> paper);
void attachReceipt(Edit &edit, Id<Expense> expense, Id<Media> paper);

} // namespace lastrivet::acts
