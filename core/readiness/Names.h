// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Records.h"

#include <string>

namespace lastrivet::readiness {

/// A record as people name it: "squawk 12, overdriven rivet in LW-R3"; one that is not on record by
/// its type and id.
Message named(const Records &records, RecordRef record);
/// The same in English.
std::string nameOf(const Records &records, RecordRef record);

} // namespace lastrivet::readiness
