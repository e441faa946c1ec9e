// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/RulesActs.h"

namespace lastrivet::acts {

void useRules(Edit &edit, const Profile &profile)
{
    edit.useProfile(profile);
}

} // namespace lastrivet::acts
