// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/readiness/SquawkFilter.h"

#include <vector>

// The choices of a filter of squawks, for the screen and for the paper that is printed from it.
namespace lastrivet::packet {

Message inWords(readiness::SquawkFilter::Standing standing);
Message inWords(readiness::Reachable reachable);
/// By whose word a squawk ends.
Message verifierInWords(SignerRole role);

/// What a filter leaves over: "outstanding", "airworthiness", "LW Left wing and below"; none when
/// it leaves nothing out.
std::vector<Message> inWords(const readiness::SquawkFilter &filter, const Records &records);

} // namespace lastrivet::packet
