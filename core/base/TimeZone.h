// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace date {
class time_zone;
}

namespace lastrivet {

/// The IANA zone of this name; null when this computer does not know it.
const date::time_zone *findZone(std::string_view name);

} // namespace lastrivet
