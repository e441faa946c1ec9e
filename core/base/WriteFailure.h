// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace lastrivet {

/// Why a new file could not be written, in a few words to stand behind a colon; `error` is an
/// `errno`. Empty for errors that are not usual in writing a file.
std::string_view usualWriteFailure(int error);

// The same for every `errno`, as an argument of a message: unusual ones in the system's own words,
// which are English.

/// Why something could not be written.
std::string whyNotWritten(int error);
/// Why something could not be read.
std::string whyNotRead(int error);
/// Why something failed that may have been either.
std::string whyDiskFailed(int error);

} // namespace lastrivet
