// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <functional>

namespace lastrivet {

/// How a language says things: its pattern for an English one, and how it writes what goes in.
struct Tongue {
    std::function<std::string(std::string_view pattern)> pattern;
    std::function<std::string(const std::string &argument)> argument;
};

/// The sentence in a language; arguments that are messages are said in it too.
std::string said(const Message &message, const Tongue &tongue);

/// A message as the argument of another one: text that `said` and `english` open again.
std::string nested(const Message &message);
/// The same as the first words of a sentence: they begin with a capital.
std::string nestedFirst(const Message &message);

/// A name or a text of the records as a message: no language changes it.
Message verbatim(std::string text);

} // namespace lastrivet
