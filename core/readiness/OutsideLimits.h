// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/Fastener.h"
#include "core/records/Measurement.h"

#include <optional>
#include <string>

namespace lastrivet::readiness {

/// What the torque is, and the limits that it is outside of; of a torque with a drag, what the
/// wrench showed too. `name` begins the sentence. Empty when it has no torque.
std::optional<Message> torqueOutside(const Fastener &fastener, const std::string &name);

/// The same of what was measured last.
std::optional<Message> measurementOutside(const Measurement &measurement, const std::string &name);

} // namespace lastrivet::readiness
