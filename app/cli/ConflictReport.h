// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/JsonWriter.h"
#include "core/project/MergeConflict.h"
#include "core/records/Records.h"

#include <ostream>

namespace lastrivet::cli {

/// One object: what met, what stands, what lost, by whom.
void writeConflict(JsonWriter &json, const MergeConflict &conflict);
/// The same as a few lines for people.
void printConflict(std::ostream &out, const Records &records, const MergeConflict &conflict);

} // namespace lastrivet::cli
