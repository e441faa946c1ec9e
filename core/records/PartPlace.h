// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Component.h"

#include <cstdint>
#include <utility>

namespace lastrivet {

/// Where a part stands among those beside it, to sort by: by position, those without one last, then
/// by id.
inline std::pair<std::int64_t, Id<Component>> partPlace(const Component &part)
{
    return {part.position.value_or(largestId), part.id};
}

} // namespace lastrivet
