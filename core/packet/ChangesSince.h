// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Aircraft.h"
#include "core/packet/FastenerEntry.h"
#include "core/packet/SquawkEntry.h"
#include "core/packet/Standing.h"
#include "core/profiles/Profile.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// What was touched since somebody signed, so that whoever signed can say whether the signature
/// still holds.
struct ChangesSince {
    struct Change {
        Moment on;
        Message what{};
        std::string part{};
        std::string by{};
        /// What was written about it.
        std::string note{};
        /// Of a torquing: value, limits and wrench.
        std::optional<FastenerEntry> torque{};
        /// False for work of which nobody said whether it changed anything.
        bool is_certain = true;
    };

    Moment as_of;
    Aircraft aircraft{};
    std::string closing{};
    std::string part{};
    HoldPointKind kind = HoldPointKind::PreCover;
    SignerRole signer_role = SignerRole::Inspector;
    Standing::Signature signature{};
    /// Number of the report of the visit at which it was given, or its reference; empty without
    /// one.
    std::string report{};
    /// By date.
    std::vector<Change> changes{};
    /// Findings of the same visit within the reach of the closing, whose correction was asked for
    /// and voids nothing, and airworthiness squawks that are open there: uncorrected ones first.
    std::vector<SquawkEntry> findings{};
    /// Photographs of the region since, newest first.
    std::vector<Photo> photos{};
    std::vector<Profile::Caution> cautions{};
};

/// For the latest signature at a hold point, as of the moment of the answer; nothing when nobody
/// has signed there, or the answer does not know its closing.
std::optional<ChangesSince> changesSince(const Records &records, const Profile &profile,
                                         const readiness::Answer &answer, Id<HoldPoint> point);

} // namespace lastrivet::packet
