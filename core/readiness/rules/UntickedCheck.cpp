// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/rules/Rules.h"

namespace lastrivet::readiness::rules {

void untickedCheck(const Judgement &judgement, Findings &findings)
{
    for (const Check *check : judgement.here().checks) {
        if (!check->not_applicable && !judgement.counts(check->done_on) &&
            judgement.exists(*check) && judgement.concerns(*check))
            findings.should(*check);
    }
}

} // namespace lastrivet::readiness::rules
