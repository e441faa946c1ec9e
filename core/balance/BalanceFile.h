// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"

#include <string_view>
#include <vector>

namespace lastrivet::balance {

/// What a balance file asks for.
struct Question {
    /// "lb" or "kg".
    std::string weight_unit;
    /// "in", "mm", "cm", "m" or "ft".
    std::string arm_unit;
    std::vector<Item> items;
    std::optional<Chord> chord;
};

/// Reads `{"weight_unit", "arm_unit", "items": [{"name", "weight", "arm"}], "mac": {"lemac",
/// "length"}}`; `mac` may be absent or null. The text may come from a stranger: what is unknown,
/// doubled, missing or of another kind is refused by its JSON pointer.
Result<Question, Message> readQuestion(std::string_view json);

} // namespace lastrivet::balance
