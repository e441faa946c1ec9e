// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/credit/SuggestedTasks.h"
#include "core/credit/Tenths.h"
#include "core/project/Edit.h"

#include <cstddef>

// What happens to the rows of the major-portion account.
namespace lastrivet::acts {

/// How many of these rows are not there yet, by section and task.
std::size_t countMissing(const Records &records, const credit::SuggestedTasks &suggested);
/// Adds the missing ones. Each counts for the maker until somebody enters who did it, so that the
/// builder's share is never shown too high.
void addTasks(Edit &edit, const credit::SuggestedTasks &suggested);
/// A row that the builder adds to the form; it counts for the maker, too.
Id<CreditTask> addTask(Edit &edit, std::string_view section, std::string_view task);
/// Records who did how much of the task, which thereby applies.
void setTenths(Edit &edit, Id<CreditTask> task, const credit::Tenths &tenths);
/// Records that the aircraft has no such task.
void setNotApplicable(Edit &edit, Id<CreditTask> task);

} // namespace lastrivet::acts
