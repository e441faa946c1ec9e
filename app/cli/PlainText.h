// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace lastrivet::cli {

/// A text of the records, or the name of a file, as a terminal may show it: line breaks become
/// spaces, what could steer the terminal a sign, and bytes that are no UTF-8 U+FFFD.
std::string onOneLine(std::string_view text);
/// Characters, not bytes.
std::size_t widthOf(std::string_view text);
/// At most `width` characters, with … in place of what is cut off.
std::string shortened(std::string_view text, std::size_t width);
/// "53 h 30", "45 min", "0 min".
std::string hoursText(Minutes minutes);
/// "1 closing", "7 closings"; the plural is the noun with s unless given.
std::string counted(std::int64_t count, std::string_view noun, std::string_view plural = {});
/// A key of a vocabulary as words: "ready to sign".
std::string spaced(std::string_view word);
std::string capitalised(std::string text);

} // namespace lastrivet::cli
