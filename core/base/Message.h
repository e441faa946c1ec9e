// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// A sentence that is not yet in a language: its English pattern, and what goes into it.
///
/// `pattern` is a literal with `{0}`, `{1}` … and doubles as the id that translations are looked up
/// by, so that making a message builds no text.
struct Message {
    std::string_view pattern;
    std::vector<std::string> arguments;

    friend bool operator==(const Message &, const Message &) = default;
};

/// `pattern` with `{0}`, `{1}` … replaced by the arguments; braces in arguments stay as they are.
std::string filled(std::string_view pattern, const std::vector<std::string> &arguments);

/// The sentence in English.
std::string english(const Message &message);

} // namespace lastrivet
