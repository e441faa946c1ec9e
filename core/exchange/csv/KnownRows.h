// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <cstdint>
#include <map>
#include <set>
#include <vector>

namespace lastrivet::exchange {

/// Records of a list that are on record already under another id, and that id: a list that grows is
/// taken in again and again, and says nothing twice.
///
/// `unnamed` are those of the list's records whose rows name no id; `named` are ids that rows name,
/// and are nobody else's. Of several equal rows as many are known as there are equal records.
std::map<std::int64_t, std::int64_t> knownRows(const Records &list, RecordType type,
                                               const std::vector<std::int64_t> &unnamed,
                                               const std::set<std::int64_t> &named,
                                               const Records &existing);

} // namespace lastrivet::exchange
