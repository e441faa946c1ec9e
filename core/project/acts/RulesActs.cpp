// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/project/acts/RulesActs.h"

#include "core/project/WorkingEdit.h"

namespace lastrivet::acts {

void useRules(Edit &edit, const Profile &profile)
{
    // Rules are no record: of all acts this one reaches behind what an edit is to everybody else.
    dynamic_cast<WorkingEdit &>(edit).useProfile(profile);
}

} // namespace lastrivet::acts
