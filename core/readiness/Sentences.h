// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <string>

namespace lastrivet::readiness {

/// What stands in the way, in one sentence that names the record.
Message sentence(const Blocker &blocker, const Records &records);
/// What would clear it, by the rules of the profile.
Message clearedBy(const Blocker &blocker, const Records &records, const Profile &profile);
/// Where the demand comes from (hold point, line of the list or profile citation); empty when it is
/// common practice.
std::string source(const Blocker &blocker, const Records &records, const Profile &profile);
/// What clears a closing that was closed early: what was missing on that day cannot be made up for
/// in any other way.
Message gapsClearedBy(const Closing &closing, const Profile &profile);
/// That a closing was closed by an earlier builder, before there were records.
Message closedBeforeRecords();
/// What is missing from the records, in one sentence that names the record.
Message sentence(const ToComplete &missing, const Records &records);
/// The state in words: "stays open, work left". Clear is never called safe.
Message stateInWords(State state);

} // namespace lastrivet::readiness
