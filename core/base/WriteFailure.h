// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace lastrivet {

/// Why a new file could not be written, in a few words to stand behind a colon; `error` is an
/// `errno`. Empty for errors that are not usual in writing a file.
std::string_view usualWriteFailure(int error);

} // namespace lastrivet
