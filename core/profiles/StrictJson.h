// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

namespace lastrivet::profiles {

/// Parses a text that may come from a stranger. Throws a `ProfileFault` for what is no JSON, no
/// UTF-8, holds U+0000, is longer than 1 MiB or nested more than 8 deep, and for a key that stands
/// twice in one object.
nlohmann::json parseStrictly(std::string_view text);

/// Throws a `ProfileFault`.
[[noreturn]] void refuseAt(std::string pointer, Message what);

/// A key as it stands in a JSON pointer (RFC 6901).
std::string pointerStep(std::string_view key);

/// The beginning of a text from a file in quotation marks, short and plain enough for a sentence.
std::string inQuotes(std::string_view text);

} // namespace lastrivet::profiles
