// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"

#include <QString>

#include <functional>
#include <string>
#include <vector>

namespace lastrivet::ui {

class RulesForm;

/// A place in a rule profile: an object with fields of its own, or a list of such.
struct RulesNode {
    /// JSON pointer (RFC 6901); empty for the whole.
    std::string pointer;
    QString title;
    /// How many steps below the whole.
    int depth = 0;
    /// Puts its fields into the form; none for a list.
    std::function<void(RulesForm &)> show;
    /// Adds a line to it; only a list has this.
    std::function<void()> add;
    /// Takes it out of its list, or moves it there; only a line of a list has these.
    std::function<void()> remove;
    std::function<void(int by)> move;
};

/// Every place of a profile in the order of its fields; each before what is below it. The nodes
/// change `profile`, which outlives them, and are stale after an `add`, a `remove` or a `move`.
std::vector<RulesNode> outlineOf(Profile &profile);

/// The place that a pointer leads to or into.
std::size_t nodeAt(const std::vector<RulesNode> &outline, std::string_view pointer);

} // namespace lastrivet::ui
