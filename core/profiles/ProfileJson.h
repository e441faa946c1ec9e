// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/profiles/Profile.h"

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

/// Why a text is no profile, and where in it.
struct ProfileFault {
    /// JSON pointer (RFC 6901); empty for the whole text.
    std::string pointer;
    /// Goes on after the place: "is empty".
    Message what;

    /// One sentence: the place, the pointer, what is wrong. `place`: the file as people know it.
    Message sentence(const std::string &place) const;
    /// The same of the copy of its rule profile that a project keeps.
    Message sentenceOfCopy() const;
};

/// Reads a profile; the text may come from a stranger. Refuses unknown, missing and doubled fields,
/// words of no vocabulary, numbers out of bounds, sources that are not listed, texts of more than
/// 1 MiB. `resources/schema/profile.schema.json` describes it.
Result<Profile, ProfileFault> readProfile(std::string_view json);

/// Everything for which `readProfile` refuses a text, in the order of the fields, at most 100;
/// empty for a profile.
std::vector<ProfileFault> profileFaults(std::string_view json);

/// The profile as JSON: fields in the order of the schema, one-space indent, final newline.
/// `readProfile` of it gives the same profile, and the same text again.
std::string profileJson(const Profile &profile);

} // namespace lastrivet
