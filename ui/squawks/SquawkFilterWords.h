// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/SquawkFilter.h"

#include <QString>

// The choices of a filter as the screen says them.
namespace lastrivet::ui {

QString standingWord(readiness::SquawkFilter::Standing standing);
QString verifierWord(SignerRole role);
QString reachWord(readiness::Reachable reachable);

} // namespace lastrivet::ui
