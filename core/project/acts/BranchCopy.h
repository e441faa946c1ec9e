// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::acts {

/// A plan of what copying a part with everything below it will make; names and codes may be changed
/// before it is carried out.
///
/// What was planned is copied: parts, steps that are not dropped, closings with their checks and
/// hold points, fasteners and measurements. What happened is not: work, dates, signatures, serial
/// numbers, shelves, notes, photographs, squawks.
struct BranchCopy {
    struct Part {
        Id<Component> original;
        std::size_t depth = 0;
        std::string name;
        /// Empty when the original has none, or no free one could be found.
        std::string code;
    };
    struct Counts {
        std::size_t steps = 0;
        std::size_t closings = 0;
        std::size_t checks = 0;
        std::size_t fasteners = 0;
        std::size_t measurements = 0;
    };

    /// Depth first; the branch itself comes first.
    std::vector<Part> parts;
    Counts counts;
    /// Whether left and right are exchanged in all names.
    bool swapsSides = false;
};

/// Plans the copy; with left and right exchanged when the branch's name names a side.
BranchCopy planBranchCopy(const Records &records, Id<Component> branch);

/// The row of `copy.parts` whose code another part has, or is to have; none when all are free.
std::optional<std::size_t> takenCode(const Records &records, const BranchCopy &copy);

/// Whether the parts of the plan still stand as they did when it was made.
bool stillFits(const Records &records, const BranchCopy &copy);

/// Makes the copy of a plan that still fits, to stand behind the original. Steps outside that came
/// before a copied one come before its copy too.
Id<Component> copyBranch(Edit &edit, const BranchCopy &copy);

} // namespace lastrivet::acts
