// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Photo.h"
#include "core/packet/Region.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Something built otherwise than drawn, with who accepted it and why.
struct DeviationEntry {
    Id<Deviation> id;
    std::string number;
    std::string title;
    std::vector<std::string> parts;
    std::string drawing_ref;
    std::string built_as;
    std::string reason;
    std::string alternatives;
    std::optional<Moment> raised_on;
    std::optional<Moment> asked_on;
    std::string asked_of;
    std::optional<Decision> decision;
    std::optional<Moment> decided_on;
    std::string decided_by;
    std::string basis;
    std::optional<Moment> built_on;
    std::optional<Moment> undone_on;
    std::vector<int> photo_numbers;
};

/// Deviations of the region and those that its blockers name, by day raised.
std::vector<DeviationEntry> deviations(const Region &region, const std::vector<Photo> &photos);

} // namespace lastrivet::packet
