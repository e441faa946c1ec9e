// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include <optional>
#include <string_view>

// A photograph takes its place on a page as an image of one bit a pixel that carries its index;
// the bytes of the photograph itself are put there when the document is finished. Qt would compress
// every picture a second time, and a picture that was compressed again proves nothing.
namespace lastrivet::print {

QImage placeholder(int index);
/// The index that an embedded image of one row carries; empty for any other image.
std::optional<int> indexOf(std::string_view imageBytes);

} // namespace lastrivet::print
