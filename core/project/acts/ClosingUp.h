// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// When a closing is closed or opened, by whom and, where that is asked for, why.
struct Act {
    Moment on;
    Id<Person> by;
    std::string reason;
    bool approximate = false;
};

/// Records that a region was closed; steps that close it and are not done yet are done with it.
void close(Edit &edit, Id<Closing> id, const Act &act);
/// Records that it was opened again.
void reopen(Edit &edit, Id<Closing> id, const Act &act);
/// Records that somebody accepted, after the event, a closing that was closed early.
Id<SignOff> acceptLate(Edit &edit, Id<Closing> id, SignOff acceptance);

/// The inspector's lists of the profile that fit what a closing encloses, in the profile's order.
std::vector<const Profile::Checklist *>
fittingChecklists(const Records &records, const Profile &profile, const Closing &closing);
/// Adds a closing with the hold points that the profile asks for and the lines of these lists. A
/// region that encloses nothing by name encloses its own part.
Id<Closing> addClosing(Edit &edit, Closing closing,
                       const std::vector<const Profile::Checklist *> &lists);

/// Ticks lines of an inspector's list.
void tick(Edit &edit, const std::vector<Id<Check>> &checks, Id<Person> by, Moment on);
void untick(Edit &edit, Id<Check> id);
/// Marks a line as not applicable to this closing, or takes that back.
void setNotApplicable(Edit &edit, Id<Check> id, bool isNotApplicable);

/// True when the closing's last event that happened by `by` closed it.
bool isClosed(const Closing &closing, Moment by);
/// When it was closed, where it was closed by `by` and that was surely earlier; what is signed at
/// `by` does not count for the closing then.
std::optional<Moment> closedBefore(const Closing &closing, Moment by);
/// When it was closed last, whether or not it was opened again since.
std::optional<Moment> lastClosed(const Closing &closing);

} // namespace lastrivet::acts
