// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

namespace lastrivet::acts {

/// Records a signature at a hold point; the credential is the person's when none is given, and the
/// photographed sheet is linked to the signature.
Id<SignOff> sign(Edit &edit, SignOff signature);

/// Takes a wrong signature out of every count, and out of the late acceptances that name it.
void withdrawSignature(Edit &edit, Id<SignOff> id, std::string_view why);

/// Adds the photographed sheet to a signature that came without one.
void attachSheet(Edit &edit, Id<SignOff> id, Id<Media> sheet);

/// Waives a hold point.
void waive(Edit &edit, Id<HoldPoint> id, Moment on, Id<Person> by, std::string_view why);

/// Live people who may sign in this role or above it, by id.
std::vector<const Person *> peopleWhoMaySign(const Records &records, SignerRole role);

} // namespace lastrivet::acts
