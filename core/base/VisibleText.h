// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace lastrivet {

/// The text made safe to show: control characters and those that change the direction of writing
/// are replaced by visible signs. Line ends and tabs stay.
std::string visibleText(std::string_view text);

} // namespace lastrivet
