// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace lastrivet::exchange {

/// A list as spreadsheets write it, in UTF-8: from UTF-16 where its mark stands in front, and bytes
/// that are neither are taken for code page 1252, in which those of older systems write. Bytes with
/// U+0000 among them are no text, and stay; so do those that are UTF-8 for the most part, to be
/// refused.
std::string listText(std::string bytes);

} // namespace lastrivet::exchange
