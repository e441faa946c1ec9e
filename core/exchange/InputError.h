// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::exchange {

/// One thing that is wrong with an input, and where.
struct InputError {
    /// JSON pointer (RFC 6901), or row and column of a list in English; empty for the whole input.
    std::string place;
    /// The record it is in, as people point at it; empty when it is in none, or `what` names it.
    std::string record;
    Message what;
    /// The row and column of a list again, so that they can be translated; else empty.
    Message spot = {};

    friend bool operator==(const InputError &, const InputError &) = default;
};

/// An error at a row of a list.
InputError errorAt(Message spot, Message what);
/// Where an error is, in words that can be translated; a pointer stays as it is.
Message placeOf(const InputError &error);

using InputErrors = std::vector<InputError>;

/// At most this many errors of one input are listed.
inline constexpr std::size_t mostErrors = 100;

/// One line: file, place, record and what is wrong.
std::string english(const InputError &error, std::string_view file);

} // namespace lastrivet::exchange
