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
/// What clears a closing that was closed with gaps: what it lacked on its day nothing else can
/// bring back.
Message gapsClearedBy(const Closing &closing, const Profile &profile);
/// Why a closing of an earlier builder is closed early, besides what was missing.
Message closedBeforeRecords();
/// What is missing from the records, in one sentence that names the record.
Message sentence(const ToComplete &missing, const Records &records);
/// The state in words: "stays open, work left". Clear is never called safe.
Message stateInWords(State state);

} // namespace lastrivet::readiness
