// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/evidence/pictures/PictureReader.h"

// One pair of functions a format, behind `readSize` and `decode`.
namespace lastrivet::evidence {

PixelSize readJpegSize(const PictureFile &file);
Result<Pixels, Message> decodeJpeg(const PictureFile &file, int edge);

PixelSize readPngSize(const PictureFile &file);
Result<Pixels, Message> decodePng(const PictureFile &file);

/// As shown: the file's own turning is applied by the decoder.
PixelSize readHeicSize(const PictureFile &file);
Result<Pixels, Message> decodeHeic(const PictureFile &file);

Message cutShort(const std::string &name);
Message damaged(const std::string &name);

} // namespace lastrivet::evidence
