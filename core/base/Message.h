// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// A sentence before it is put into a language: its English pattern and its arguments.
///
/// `pattern` is a string literal with `{0}`, `{1}` …, and also the key by which translations are
/// looked up; so making a message formats nothing.
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
