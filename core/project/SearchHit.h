// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/RecordType.h"

#include <string>

namespace lastrivet {

/// A record that a search found.
struct SearchHit {
    RecordRef record;
    /// The record's title, name or first words.
    std::string title;
    /// The words around the hit; plain text.
    std::string snippet;
};

} // namespace lastrivet
