// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string_view>

namespace lastrivet::balance {

/// What a person wrote as a weight, in `unit`: "84", "84 kg", "185 lb"; a comma stands for a point,
/// and is refused where it could be a thousand ("1,850"). A weight in the other unit is converted,
/// one in none that is known is refused.
Result<double, Message> readWeight(std::string_view text, WeightUnit unit);
/// The same of an arm: "1750", "1750 mm", "68.9 in", "1,75 m".
Result<double, Message> readArm(std::string_view text, ArmUnit unit);

/// A weight for a field with its unit in another beside it, where nothing is converted: a unit that
/// is typed behind the number has to be that one.
Result<double, Message> readWeightIn(std::string_view text, std::optional<WeightUnit> unit);
/// The same of an arm.
Result<double, Message> readArmIn(std::string_view text, std::optional<ArmUnit> unit);

} // namespace lastrivet::balance
