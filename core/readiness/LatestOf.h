// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <vector>

namespace lastrivet::readiness {

/// The greatest id among those that no other is after; null for none. `moment` must be set on each.
///
/// A day ties with every time of it, so looking for the latest one after the other does not do.
template <class Record, class MomentOf>
const Record *latestOf(const std::vector<const Record *> &records, MomentOf moment)
{
    const Record *latest = nullptr;
    for (const Record *candidate : records) {
        bool isBeaten = false;
        for (const Record *other : records)
            isBeaten = isBeaten || after(moment(*other), moment(*candidate));
        if (!isBeaten && (!latest || candidate->id > latest->id))
            latest = candidate;
    }
    return latest;
}

} // namespace lastrivet::readiness
