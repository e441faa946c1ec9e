// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <optional>

namespace lastrivet::readiness {

/// A live record that names one that is not on record, or is withdrawn: it counts nowhere.
struct Stray {
    RecordRef record;
    RecordRef named;

    friend bool operator==(const Stray &, const Stray &) = default;
};

/// The first of the records that an answer stands on whose part, closing, hold point or signer is
/// missing, as after another program wrote into the database; `verify` finds all there are. Takes
/// one look at each record.
std::optional<Stray> firstStray(const Records &records);

/// The first live part that lies inside itself, as after another program wrote into the database:
/// what it holds may be in no closing's reach.
std::optional<Id<Component>> firstRing(const Records &records);

} // namespace lastrivet::readiness
