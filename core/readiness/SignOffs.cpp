// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/SignOffs.h"

#include "core/readiness/LatestOf.h"

#include <vector>

namespace lastrivet::readiness {

const SignOff *latestSignOff(const Records &records, Id<HoldPoint> point, Moment by)
{
    std::vector<const SignOff *> signOffs;
    for (const SignOff &signOff : records.sign_offs) {
        if (!signOff.withdrawn_on && signOff.hold_point_id == point &&
            happened(signOff.signed_on, by))
            signOffs.push_back(&signOff);
    }
    return latestOf(signOffs, [](const SignOff &signOff) { return *signOff.signed_on; });
}

} // namespace lastrivet::readiness
