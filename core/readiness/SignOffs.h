// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

namespace lastrivet::readiness {

/// True for accepted, with findings or without.
inline bool isAccepted(const SignOff &signOff)
{
    return signOff.result != SignOffResult::Rejected;
}

/// The latest live sign-off of a hold point that happened by `by`, whatever it says; null when
/// nobody has signed there.
const SignOff *latestSignOff(const Records &records, Id<HoldPoint> point, Moment by);

} // namespace lastrivet::readiness
