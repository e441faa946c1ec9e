// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <vector>

namespace lastrivet::readiness {

/// The latest record, of several that tie the one with the greatest id; null when there is none.
///
/// A day ties with every time of that day, so `after` is no ordering and one pass would not do.
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
