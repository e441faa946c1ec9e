// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

namespace lastrivet::acts {

/// The project goes by these rules from now on. Hold points and checks that are on record stay as
/// they are; closings made later get those of the new rules.
void useRules(Edit &edit, const Profile &profile);

} // namespace lastrivet::acts
