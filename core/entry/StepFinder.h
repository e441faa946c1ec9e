// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/entry/PartFinder.h"
#include "core/records/Records.h"

#include <string>
#include <vector>

namespace lastrivet::entry {

/// How a step is pointed at: the code of its part and its number there, "LW-R1.2"; empty when one
/// of them is missing.
std::string stepMark(const Records &records, const Step &step);

/// The live steps that a folded word may mean: by `stepMark`, by plan reference, or by the number
/// alone on one of `parts`. More than one when the word does not tell.
std::vector<Id<Step>> stepsMeant(const Records &records, const std::string &word,
                                 const std::vector<Id<Component>> &parts);

} // namespace lastrivet::entry
