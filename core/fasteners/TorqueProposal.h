// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/records/Fastener.h"
#include "core/workshop/OwnLimits.h"
#include "core/workshop/Torque.h"

#include <string_view>
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
    /// What the bolt may never see, without drag.
    double allowed = 0;
    /// The drag that was read off the wrench, to be added to what it is set to.
    double drag = 0;
    /// What the table remarks, in English; empty mostly.
    std::string remark;
    workshop::Source source;

    double setLeast() const { return least + drag; }
    double setMost() const { return most + drag; }
};

/// Says in one sentence why there is none: no thread, one that is not in the table, a drag below
/// zero or larger than what the nut is tightened to.
Result<TorqueProposal, Message> proposalFor(const Fastener &fastener, workshop::Nut nut);

/// Puts a project's own limit in the place of the table's. False, and nothing is changed, when it
/// has one end only or a unit that is none of torque.
bool takeOwnLimit(TorqueProposal &proposal, const workshop::OwnLimit &own);

/// Why limits and drag of a record cannot be so: a limit or the drag is below zero, the drag is
/// larger than the upper limit, or the limits are the wrong way round.
std::optional<Message> whyNotLimits(const Fastener &fastener);

/// The setting of the wrench for the nut to see `value`: with the drag, through an extension.
/// `value` without drag; lever and extension in any one unit.
Result<double, Message> wrenchFor(double value, double drag, double lever, double extension);

} // namespace lastrivet::fasteners
