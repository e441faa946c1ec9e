// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Records.h"

namespace lastrivet::readiness {

/// A record as people name it: "squawk 12, overdriven rivet in LW-R3"; `nameOf` is its English.
Message named(const Records &records, RecordRef record);

} // namespace lastrivet::readiness
