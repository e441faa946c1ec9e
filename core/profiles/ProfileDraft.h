// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/ProfileJson.h"

#include <optional>
#include <string>
#include <string_view>

namespace lastrivet {

class ProfileLibrary;

/// A profile that somebody is still writing, as text; see `profileJson`.
///
/// Reads what `profileJson` wrote of a profile that is not right yet, as far as it can be read:
/// fields that are missing or cannot be are left as in a new profile.
Profile readDraft(std::string_view json);

/// A copy to be changed: with an id, a name and an edition of its own, so that it is not mistaken
/// for the profile that it came from.
Profile copyToEdit(const Profile &profile, std::string_view name, std::string_view day);

/// Why the draft cannot be used, the first reason there is: as `readProfile` refuses it, or because
/// it goes by the id of a profile that came with the program and says otherwise.
std::optional<ProfileFault> whyNot(const Profile &draft, const ProfileLibrary &shipped);

} // namespace lastrivet
