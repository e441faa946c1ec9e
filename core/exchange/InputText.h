// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace lastrivet::exchange {

/// The whole of a file, without a byte-order mark. Throws `UnreadableInput`.
std::string readInputFile(const std::filesystem::path &file);

} // namespace lastrivet::exchange
