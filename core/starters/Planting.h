// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"
#include "core/starters/Starter.h"

#include <functional>
#include <set>
#include <string>

namespace lastrivet {

/// What of a starter goes into a project, and in which language.
struct Planting {
    /// Codes of parts that are not wanted; what lies inside them is not either.
    std::set<std::string> left_out;
    /// The starter's English texts in the language of the records; as they are when empty.
    std::function<std::string(const std::string &text)> said;
};

/// The starter without what is left out: no closing of a part that is not there, none that would
/// enclose nothing.
Starter pruned(Starter starter, const std::set<std::string> &leftOut);

/// Adds the parts and closings of a starter, with the hold points and lists that the project's
/// profile asks for.
void plant(Edit &edit, const Starter &starter, const Planting &how);

} // namespace lastrivet
