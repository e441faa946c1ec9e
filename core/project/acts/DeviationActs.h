// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <string_view>

namespace lastrivet::acts {

/// Adds something that is or will be built otherwise than drawn, raised today; on no part when
/// `part` is empty.
Id<Deviation> addDeviation(Edit &edit, Id<Component> part, std::string_view title);

/// Records that somebody was asked about it.
void askAbout(Edit &edit, Id<Deviation> deviation, Id<Person> who, Moment on);
/// Records the decision and its basis: a letter, a drawing, a paragraph.
void decide(Edit &edit, Id<Deviation> deviation, Decision decision, Id<Person> by, Moment on,
            std::string_view basis);
/// Records that it was built so, and no longer that it was put back.
void buildSo(Edit &edit, Id<Deviation> deviation, Moment on);
/// Records that it was put back as drawn.
void undoDeviation(Edit &edit, Id<Deviation> deviation, Moment on);
void attach(Edit &edit, Id<Deviation> deviation, Id<Media> paper);

/// How far a deviation has come.
enum class DeviationStage {
    Raised,
    Asked,
    Approved,
    Rejected,
    BuiltUndecided,
    BuiltRejected,
    Undone
};

DeviationStage stageOf(const Deviation &deviation);

} // namespace lastrivet::acts
