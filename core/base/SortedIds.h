// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"

#include <algorithm>

namespace lastrivet {

/// Inserts an id at its place in the ascending set; does nothing when it is there already.
template <class Record> void insertSorted(IdSet<Record> &ids, Id<Record> id)
{
    const auto place = std::ranges::lower_bound(ids, id);
    if (place == ids.end() || *place != id)
        ids.insert(place, id);
}

} // namespace lastrivet
