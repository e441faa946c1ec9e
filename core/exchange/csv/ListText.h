// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace lastrivet::exchange {

/// A list in UTF-8, from the encodings that spreadsheets write: UTF-16 when it begins with a
/// byte-order mark; bytes that are not UTF-8 are taken for code page 1252, which older systems use.
/// Bytes that contain U+0000, or are UTF-8 for the most part, stay as they are, to be refused.
std::string listText(std::string bytes);

} // namespace lastrivet::exchange
