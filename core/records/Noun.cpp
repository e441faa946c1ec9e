// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/Designation.h"

#include <array>

namespace lastrivet {

std::string_view noun(RecordType type)
{
    constexpr std::array<std::string_view, recordTypeCount> nouns{
        "project",      "person",       "part",
        "step",         "log entry",    "closing",
        "hold point",   "check",        "inspection",
        "sign-off",     "squawk",       "deviation",
        "bulletin",     "fastener",     "measurement",
        "tool",         "packing line", "material lot",
        "material use", "file",         "expense",
        "credit task",  "equipment",    "weighing",
        "loading case", "envelope",     "certificate document",
        "flight"};
    return nouns[std::size_t(type)];
}

} // namespace lastrivet
