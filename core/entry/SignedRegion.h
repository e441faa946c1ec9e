// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/records/Records.h"

namespace lastrivet::entry {

/// The closings over a part that are signed for and still open: work there may change what was
/// inspected. Ascending.
IdSet<Closing> signedAndOpen(const Records &records, const readiness::Answer &answer,
                             Id<Component> part);

/// The live step that closes one of them, not done yet; none when there is none.
Id<Step> closingStep(const Records &records, const IdSet<Closing> &closings);

} // namespace lastrivet::entry
