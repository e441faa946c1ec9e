// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Moment.h"
#include "core/base/Result.h"
#include "core/entry/PartFinder.h"

#include <optional>
#include <string_view>

namespace lastrivet::entry {

/// Where log entries are moved to: a day, a part, or both.
struct Move {
    std::optional<Moment> day;
    Id<Component> part;
};

/// Reads `yesterday`, `LA` or `3 Mar left aileron`; else the sentence why not.
Result<Move, Message> readMove(std::string_view text, const PartFinder &parts, Moment today);

} // namespace lastrivet::entry
