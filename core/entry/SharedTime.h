// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/records/WorkSession.h"

#include <cstddef>
#include <vector>

namespace lastrivet::entry {

/// `all` divided into `count` equal shares; the first also gets the remainder.
std::vector<Minutes> sharesOf(Minutes all, std::size_t count);

/// The session once for each of the parts, its time and that of those who worked shared among them;
/// nobody has more than a share lasts. A share of nothing is written down as not known. Where the
/// whole has no time, those who worked have equal shares of theirs.
std::vector<WorkSession> sharedAmong(const WorkSession &session,
                                     const std::vector<Id<Component>> &parts);

/// The session once for each of the stretches, which add up to its time; the time of those who
/// worked is shared in the same order, nobody having more than a stretch lasts. A stretch of zero
/// is one whose time is not known.
std::vector<WorkSession> sharedInto(const WorkSession &session,
                                    const std::vector<Minutes> &stretches);

} // namespace lastrivet::entry
