// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

namespace lastrivet::acts {

/// A step is done on a day; it is no longer dropped. A step that was done keeps its day.
void tickStep(Edit &edit, Id<Step> step, Moment on);
/// A step was not done after all.
void untickStep(Edit &edit, Id<Step> step);
/// A step will never be done.
void dropStep(Edit &edit, Id<Step> step, Moment on);

/// A step behind the part's other steps.
Id<Step> addStep(Edit &edit, Id<Component> part, std::string_view title);

} // namespace lastrivet::acts
