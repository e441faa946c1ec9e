// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace lastrivet {

/// Why a new file could not be written, in a few words that go on after a colon; `error` is what
/// the system said, as in `errno`. Empty for what does not usually happen there.
std::string_view usualWriteFailure(int error);

} // namespace lastrivet
