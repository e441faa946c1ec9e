// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Verdicts.h"
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void innerClosedEarly(const Judgement &judgement, Findings &findings)
{
    Verdicts &verdicts = judgement.verdicts();
    for (const std::size_t inner : judgement.here().inner) {
        const auto closed = verdicts.closingMoment(inner, judgement.at());
        if (closed && verdicts.isClosedEarly(inner, *closed))
            findings.must(*judgement.ground().closings[inner].closing);
    }
}

} // namespace lastrivet::readiness::rules
