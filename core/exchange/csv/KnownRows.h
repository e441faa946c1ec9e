// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstdint>
#include <map>
#include <set>
#include <vector>

namespace lastrivet::exchange {

/// Which records of a list are on record already under another id, and under which: a growing list
/// can be imported again and again without doubling anything.
///
/// `unnamed` are the records of the list whose rows give no id; `named` are the ids that rows do
/// give, which are not matched. Of several equal rows as many are known as there are equal records.
std::map<std::int64_t, std::int64_t> knownRows(const Records &list, RecordType type,
                                               const std::vector<std::int64_t> &unnamed,
                                               const std::set<std::int64_t> &named,
                                               const Records &existing);

} // namespace lastrivet::exchange
