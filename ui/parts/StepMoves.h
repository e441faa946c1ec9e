// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Step.h"

#include <vector>

namespace lastrivet {
struct Records;
} // namespace lastrivet

namespace lastrivet::ui {

class Session;

/// Puts steps before another of the same part, or last in it when `before` is none, and says so by
/// name. False when they are steps of several parts, which is said.
bool moveStepsByPerson(Session &session, const std::vector<Id<Step>> &steps, Id<Step> before);
/// One place up or down.
void moveStepsByKey(Session &session, const std::vector<RecordRef> &steps, int by);
/// Whether that would move them.
bool canMoveByKey(const Records &records, const std::vector<RecordRef> &steps, int by);
/// Makes `later` wait for `earlier`; says why not when it already is the other way round.
bool orderByPerson(Session &session, Id<Step> earlier, Id<Step> later);

} // namespace lastrivet::ui
