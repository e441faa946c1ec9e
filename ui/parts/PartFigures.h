// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Minutes.h"
#include "core/records/Records.h"

#include <unordered_map>

namespace lastrivet::ui {

/// What the tree tells of a part, everything below it counted in.
struct PartFigures {
    Minutes minutes;
    int open_squawks = 0;
    /// Photos and videos, each once however often it is linked.
    int photos = 0;
    /// Lines of fasteners that were left finger-tight.
    int finger_tight = 0;

    friend bool operator==(const PartFigures &, const PartFigures &) = default;
};

/// By component id, the whole aircraft under 0; parts with nothing are missing.
using FiguresByPart = std::unordered_map<std::int64_t, PartFigures>;

/// `asOf` is the day as of which fasteners are finger-tight.
FiguresByPart figuresByPart(const Records &records, Moment asOf);

/// The part that the record of a photo's link belongs to; none when it has none.
Id<Component> partOfLink(const Records &records, const Media::Link &link);

} // namespace lastrivet::ui
