// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <functional>

namespace lastrivet {

/// How messages are put into one language.
struct Tongue {
    /// The language's own pattern in place of an English one.
    std::function<std::string(std::string_view pattern)> pattern;
    /// An argument as the language writes it, days for instance; unchanged where this is empty.
    std::function<std::string(const std::string &argument)> argument;
};

/// The sentence in a language; nested messages are put into it too.
std::string said(const Message &message, const Tongue &tongue);

/// A message encoded as an argument of another one; `said` and `english` decode it.
std::string nested(const Message &message);
/// The same at the beginning of a sentence: its first letter becomes a capital.
std::string nestedFirst(const Message &message);

/// A name or a text of the records as a message, which is the same in every language.
Message verbatim(std::string text);

} // namespace lastrivet
