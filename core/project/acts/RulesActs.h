// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

namespace lastrivet::acts {

/// Makes this the project's rule profile. Hold points and checks that are on record stay as they
/// are; closings made later get those of the new profile.
void useRules(Edit &edit, const Profile &profile);

} // namespace lastrivet::acts
