// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace lastrivet {

/// The text as it can be shown: characters that would steer a terminal, or turn round the order in
/// which their neighbours are read, stand there as signs of their own. Lines and tabs stay.
std::string visibleText(std::string_view text);

} // namespace lastrivet
