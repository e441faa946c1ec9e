// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// The live records that name one of `records`, and those that name these, and so on; without
/// `records` themselves, by type and id.
///
/// Links of photos, the hold points of an inspection and the order of steps are left out: what is
/// withdrawn there is passed over.
std::vector<RecordRef> companions(const Records &all, const std::vector<RecordRef> &records);

/// Takes wrong records out of every count, all for one reason; they stay in the journal.
void withdraw(Edit &edit, const std::vector<RecordRef> &records, std::string_view why);

} // namespace lastrivet::acts
