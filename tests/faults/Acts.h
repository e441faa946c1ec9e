// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Project.h"
#include "tests/faults/Supplies.h"
#include "tests/faults/Worker.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::faults {

/// What an act leaves behind.
enum class Effect {
    OnRecords, ///< one change, or none
    OnFiles,   ///< files beside the project
    OnCopies,  ///< a day's work, and a copy of the project with it
};

/// Something a person does with a project, which a fault may break off anywhere.
struct Act {
    std::string_view name;
    Effect effect;
    /// Answers why it was not done, a sentence each; nothing when it was. Throws `Fault`s.
    std::vector<std::string> (*perform)(Project &project, Supplies &supplies);
    /// What has to be there before; not part of the act.
    void (*prepare)(Project &project, Supplies &supplies) = [](Project &, Supplies &) {};
};

/// Does an act over and over; says `ready`, and after each time the hash of the newest journal row,
/// or why it was not done.
void keepDoing(const Act &act, Project &project, Supplies &supplies, const Worker::Say &say,
               const Worker::IsToEnd &isToEnd);

/// All acts that need no desktop.
std::span<const Act> acts();
/// One of them by its name.
const Act &act(std::string_view name);

} // namespace lastrivet::faults
