// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void tooFewPhotos(const Judgement &judgement, Findings &findings)
{
    const Closing &closing = judgement.closing();
    if (!closing.permanent || judgement.here().isAircraft)
        return;
    if (judgement.photos().count < judgement.profile().interior_photos)
        findings.should(closing);
}

} // namespace lastrivet::readiness::rules
