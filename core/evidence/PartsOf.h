// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <vector>

namespace lastrivet::evidence {

/// The live parts that a file is about, by id and each once: those that it is linked to, and those
/// that the squawks, steps, log entries and other records name which it is linked to.
std::vector<Id<Component>> partsOf(const Records &records, const Media &media);

/// True for a photo or video that says of no part or closing what it shows. Receipts and signed
/// sheets need none.
bool isUnassigned(const Records &records, const Media &media);

} // namespace lastrivet::evidence
