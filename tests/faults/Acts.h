// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "tests/faults/Supplies.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::faults {

/// Something a person does with a project, which a fault may break off anywhere.
struct Act {
    std::string_view name;
    /// Answers why it was not done, a sentence each; nothing when it was. Throws `Fault`s.
    std::vector<std::string> (*perform)(Project &project, Supplies &supplies);
};

/// Acts that change the records, each by one change at most.
std::span<const Act> changingActs();
/// Acts that write elsewhere, into folders beside the project's.
std::span<const Act> writingActs();
/// Acts that copy the project: first a day's work is logged, so that there is something new.
std::span<const Act> copyingActs();
/// One of all these by its name.
const Act &act(std::string_view name);

} // namespace lastrivet::faults
