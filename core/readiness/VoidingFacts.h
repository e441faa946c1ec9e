// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/readiness/Judgement.h"

#include <vector>

namespace lastrivet::readiness {

/// What happened after a signature and touches what was signed for, by record name, id and moment.
std::vector<Fact> voidingFacts(const Judgement &judgement, const HoldPoint &point,
                               const SignOff &signOff);

} // namespace lastrivet::readiness
