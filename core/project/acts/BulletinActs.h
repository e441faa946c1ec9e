// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

namespace lastrivet::acts {

/// Adds a document of the maker or the authority that was received today; on no part when `part` is
/// empty.
Id<Bulletin> addBulletin(Edit &edit, Id<Component> part, std::string_view title);

/// Records whether it concerns this aircraft, and on what basis that was found.
void setApplies(Edit &edit, Id<Bulletin> bulletin, bool applies, std::string_view basis);
/// Records that what it asks for was done; `basis` says how, and by which document.
void comply(Edit &edit, Id<Bulletin> bulletin, Moment on, std::string_view basis);
void attach(Edit &edit, Id<Bulletin> bulletin, Id<Media> paper);

} // namespace lastrivet::acts
