// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

namespace lastrivet::readiness {

/// How a live closing would stand at `asOf` if it had been closed at `on`: closed, or closed early
/// with what stood against it then.
ClosingAnswer ifClosed(const Records &records, const Profile &profile, Id<Closing> id, Moment on,
                       Moment asOf);

} // namespace lastrivet::readiness
