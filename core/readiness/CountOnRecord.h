// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Judgement.h"

namespace lastrivet::readiness {

/// Counts what is on record in the reach by the moment judged, excused or not.
OnRecord countOnRecord(const Judgement &judgement);

/// True when by the moment judged somebody worked, found, measured or torqued something in the
/// reach, built it otherwise than drawn, or signed or waived a hold point of the closing.
bool isBegun(const Judgement &judgement, const OnRecord &counted);

} // namespace lastrivet::readiness
