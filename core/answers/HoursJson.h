// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/hours/Hours.h"
#include "core/records/Records.h"

#include <iosfwd>

namespace lastrivet::answers {

/// The hours as one JSON object and a line end. Parts and people come with their names from
/// `records`.
void writeJson(const hours::Totals &totals, const Records &records, std::ostream &out);

} // namespace lastrivet::answers
