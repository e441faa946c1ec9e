// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <optional>
#include <string>

namespace lastrivet::packet {

/// Which aircraft a document is about, and who builds it.
struct Aircraft {
    std::string project;
    std::string type;
    std::string designer;
    std::string model;
    std::string registration;
    std::string serial_number;
    std::string kit_number;
    std::string authority_file;
    std::optional<Origin> origin;
    std::optional<Moment> started_on;
    std::string builder;
    std::string builder_address;
    /// Name and edition of the rule profile.
    std::string rules;
};

Aircraft aircraftOf(const Records &records, const Profile &profile);

} // namespace lastrivet::packet
