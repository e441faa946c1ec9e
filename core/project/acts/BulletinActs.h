// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

namespace lastrivet::acts {

/// Notes a paper of the maker or the authority that came today; on no part when `part` is none.
Id<Bulletin> addBulletin(Edit &edit, Id<Component> part, std::string_view title);

/// It was looked into, and concerns this aircraft or does not; why stands in the basis.
void setApplies(Edit &edit, Id<Bulletin> bulletin, bool applies, std::string_view basis);
/// What it asks for was done; the basis says how, and by which paper.
void comply(Edit &edit, Id<Bulletin> bulletin, Moment on, std::string_view basis);
void attach(Edit &edit, Id<Bulletin> bulletin, Id<Media> paper);

} // namespace lastrivet::acts
