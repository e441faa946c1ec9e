// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Moment.h"
#include "core/records/RecordType.h"

#include <optional>
#include <string>

namespace lastrivet {

struct Media;

/// A lot of sealant, resin, glue, paint or the like.
struct MaterialLot {
    static constexpr RecordType type = RecordType::MaterialLot;

    Id<MaterialLot> id;
    std::string name;
    std::string specification;
    std::string lot_number;
    std::string supplier;
    /// The document that came with it.
    Id<Media> certificate_id;
    /// Whether it hardens after use, so that a use needs its cure time.
    bool cures = false;
    std::optional<Moment> opened_on;
    std::optional<Moment> expires_on;
    /// How or where it is to be kept.
    std::string storage;
    std::string note;
    std::optional<Moment> withdrawn_on;
    std::string withdrawn_why;

    friend bool operator==(const MaterialLot &, const MaterialLot &) = default;
};

} // namespace lastrivet
