// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace lastrivet::fasteners {

/// The words with a thread that begins them written in one: "1/4-28" for "1/4 - 28", "10-32" for
/// "No. 10-32", "M6x1" for "M6 x 1". "M6 x 20" stays, since that says how long a bolt is.
std::string withThreadInOneWord(std::string_view words);

} // namespace lastrivet::fasteners
