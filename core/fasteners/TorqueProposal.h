// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Fastener.h"
#include "core/workshop/OwnLimits.h"
#include "core/workshop/Torque.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::fasteners {

/// What the table proposes for a fastener, in the fastener's own unit; the drawing comes first.
struct TorqueProposal {
    std::string thread;
    workshop::Nut nut = workshop::Nut::Tension;
    TorqueUnit unit = TorqueUnit::InchPounds;
    /// Without drag: the limits of the record.
    double least = 0;
    double most = 0;
    /// What the bolt may never see, without drag; nothing where the table's upper limit is not the
    /// one that stands.
    std::optional<double> allowed;
    /// Which of the limits are the project's own.
    bool is_least_own = false;
    bool is_most_own = false;
    /// The drag that was read off the wrench, to be added to what it is set to.
    double drag = 0;
    /// What the table remarks, in English; empty mostly.
    std::string remark;
    workshop::Source source;

    double setLeast() const { return least + drag; }
    double setMost() const { return most + drag; }
};

/// The table's limits, or in their place the project's own. Says in one sentence why there are
/// none: no thread, one that is not in the table, an own limit that cannot be taken, a drag below
/// zero or larger than what the nut is tightened to.
Result<TorqueProposal, Message> proposalFor(const Fastener &fastener, workshop::Nut nut,
                                            const std::vector<workshop::OwnLimit> &own = {});

/// Puts a project's own limit in the place of the table's, where it has one end only, of that end.
/// Says why not, and nothing is changed, when its unit is none of torque or the table's other end
/// does not go with it.
std::optional<Message> takeOwnLimit(TorqueProposal &proposal, const workshop::OwnLimit &own);

/// Why limits and drag of a record cannot be so: a limit or the drag is below zero, the drag is
/// larger than the upper limit, or the limits are the wrong way round.
std::optional<Message> whyNotLimits(const Fastener &fastener);

/// The setting of the wrench for the nut to see `value`: with the drag, through an extension.
/// `value` without drag; lever and extension in any one unit.
Result<double, Message> wrenchFor(double value, double drag, double lever, double extension);

} // namespace lastrivet::fasteners
