// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// The entries that one entry becomes when it is split as a text says: `LA + RW` by parts in equal
/// shares, `40m + 20m` by minutes, `LA 40m + RW` with the rest to those that say no time. At least
/// two pieces; their minutes add up to those of the entry. Else the sentence why not.
Result<std::vector<WorkSession>, Message>
readSplit(std::string_view text, const WorkSession &session, const PartFinder &parts);

} // namespace lastrivet::entry
