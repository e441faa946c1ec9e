// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/records/RecordType.h"
#include "core/records/Records.h"

#include <string>
#include <string_view>

namespace lastrivet {

/// What people call a record of this type: "log entry" for a work session, "part" for a component.
std::string_view noun(RecordType type);

/// A record in a sentence, so that it can be found: `squawk 12 “Overdriven rivet”`, `part LW-R3
/// “Rib 3”`.
///
/// The number or code where there is one, else the id; then the title, or the kind or the day of
/// records without one. A record that does not exist is given by noun and id.
Message designated(const Records &records, RecordRef record);

/// A record as people speak of it: by its number or code where they gave it one, else by title,
/// kind or day; never by its id.
Message spoken(const Records &records, RecordRef record);

/// As `designated`, in English.
std::string designation(const Records &records, RecordRef record);

} // namespace lastrivet
