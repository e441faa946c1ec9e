// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"

#include <optional>
#include <string_view>

namespace lastrivet::calendar {

/// Workshop time of an IANA zone as UTC; empty for a day without time and for an unknown zone. Of
/// an hour that occurs twice it takes the first; one that does not occur counts on from before it.
std::optional<Moment> inUtc(Moment wallClock, std::string_view zone);

} // namespace lastrivet::calendar
