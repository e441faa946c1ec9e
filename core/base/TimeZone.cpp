// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/TimeZone.h"

#include <date/tz.h>

#include <exception>
#include <string>

namespace lastrivet {

const date::time_zone *findZone(std::string_view name)
{
    try {
        return date::locate_zone(std::string(name));
    } catch (const std::exception &) {
        return nullptr;
    }
}

} // namespace lastrivet
