// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <iosfwd>

namespace lastrivet::answers {

/// The readiness answer as one JSON object and a line end, with English sentences. `records` and
/// `profile` are those that it was worked out from.
void writeJson(const readiness::Answer &answer, const Records &records, const Profile &profile,
               std::ostream &out);

} // namespace lastrivet::answers
