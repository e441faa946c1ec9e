// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

namespace lastrivet::readiness {

/// Answers for every closing whether it may be closed at `as_of`, and if not, what stands in the
/// way.
///
/// A pure function of the snapshot: withdrawn records count nowhere, nor does what happened after
/// `as_of`; only a maker's document and the findings of a rejection count whatever their day. The
/// records must satisfy the invariants.
Answer readiness(const Records &records, const Profile &profile, Moment as_of);

} // namespace lastrivet::readiness
