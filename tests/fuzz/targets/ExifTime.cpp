// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/evidence/pictures/ExifTime.h"
#include "core/evidence/pictures/Exif.h"
#include "tests/fuzz/Targets.h"

namespace lastrivet::fuzz {

/// A camera's time in the first line, its offset in the second.
void exif_time(Input input)
{
    const std::string_view text = textOf(input);
    const auto end = std::min(text.find('\n'), text.size());
    evidence::Exif exif;
    exif.taken = evidence::parseExifTime(text.substr(0, end));
    exif.offset_minutes = evidence::parseExifOffset(text.substr(std::min(end + 1, text.size())));
    promised(!exif.offset_minutes || std::abs(*exif.offset_minutes) < 15 * 60);
    const auto taken = evidence::takenOn(exif, "Europe/Berlin");
    promised(!taken || Moment::parse(taken->text()) == taken);
}

} // namespace lastrivet::fuzz
