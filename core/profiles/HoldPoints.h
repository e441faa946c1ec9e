// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet {

/// The hold points that the profile asks for of a closing and that it does not have yet, without
/// ids.
///
/// One that is there with the same kind and signer counts, so that signing twice is never asked
/// for.
std::vector<HoldPoint> holdPointsFor(const Closing &closing, const Records &records,
                                     const Profile &profile);

} // namespace lastrivet
