// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::entry {

/// The text with small letters (ASCII and Latin-1), so that typed words find written ones.
std::string folded(std::string_view text);

/// The folded words of a text, without the commas, brackets and quotes around them.
std::vector<std::string> foldedWords(std::string_view text);

} // namespace lastrivet::entry
