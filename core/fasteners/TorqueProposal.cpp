// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/TorqueProposal.h"

#include "core/fasteners/SpokenWords.h"
#include "core/fasteners/TorqueUnits.h"
#include "core/workshop/Wrench.h"

#include <cmath>
#include <fmt/format.h>
#include <utility>

namespace lastrivet::fasteners {

namespace {

/// A number as people write it: no more figures than it needs, and no binary fractions.
std::string plain(double value)
{
    return fmt::format("{:.6g}", value);
}

Message dragTooLarge(const Fastener &fastener, double most)
{
    return {"A drag of {0} {2} is more than the {1} {2} that the nut is tightened to: something is "
            "wrong with the nut, the bolt or the reading.",
            {plain(*fastener.torque_drag), plain(most), std::string(word(fastener.torque_unit))}};
}

} // namespace

Result<TorqueProposal, Message> proposalFor(const Fastener &fastener, workshop::Nut nut,
                                            const std::vector<workshop::OwnLimit> &own)
{
    if (fastener.thread.empty())
        return Message{"Give the thread, and the table proposes limits.", {}};
    const auto found = workshop::torque(fastener.thread, nut, 0);
    if (!found)
        return Message{"The torque table has no thread “{0}”: take the limits from the drawing.",
                       {fastener.thread}};
    const auto inUnit = [&](double inchPounds) {
        return converted(inchPounds, TorqueUnit::InchPounds, fastener.torque_unit);
    };
    TorqueProposal proposal;
    proposal.thread = found->thread;
    proposal.nut = nut;
    proposal.unit = fastener.torque_unit;
    proposal.least = inUnit(found->minimum);
    proposal.most = inUnit(found->maximum);
    proposal.allowed = inUnit(found->allowed_maximum);
    proposal.drag = fastener.torque_drag.value_or(0);
    proposal.remark = found->remark;
    proposal.source = found->source;
    if (const auto *limit =
            workshop::ownLimit(own, workshop::torqueSubject(proposal.thread, word(nut)))) {
        if (auto why = takeOwnLimit(proposal, *limit))
            return *std::move(why);
    }
    if (!std::isfinite(proposal.drag) || proposal.drag < 0)
        return Message{"A drag is a torque of 0 or more.", {}};
    if (proposal.drag > proposal.most)
        return dragTooLarge(fastener, proposal.most);
    return proposal;
}

std::optional<Message> takeOwnLimit(TorqueProposal &proposal, const workshop::OwnLimit &own)
{
    const auto unit = torqueUnitSaid(own.unit);
    if (!unit)
        return Message{"The project's own limit of {0} is in “{1}”, which is no unit of torque.",
                       {proposal.thread, own.unit}};
    const auto inUnit = [&](double torque) { return converted(torque, *unit, proposal.unit); };
    const double least = own.minimum ? inUnit(*own.minimum) : proposal.least;
    const double most = own.maximum ? inUnit(*own.maximum) : proposal.most;
    if (least > most)
        return Message{"The project's own limit of {0}, from {1}, does not go with the table's {2} "
                       "to {3} {4}: write down both its ends.",
                       {proposal.thread, own.source, plain(proposal.least), plain(proposal.most),
                        std::string(word(proposal.unit))}};
    proposal.least = least;
    proposal.most = most;
    proposal.is_least_own = own.minimum.has_value();
    proposal.is_most_own = own.maximum.has_value();
    if (proposal.is_most_own)
        proposal.allowed.reset();
    if (proposal.is_least_own && proposal.is_most_own) {
        proposal.remark.clear();
        proposal.source = {own.source, "own"};
    }
    return std::nullopt;
}

std::optional<Message> whyNotLimits(const Fastener &fastener)
{
    const auto &[least, most] = std::pair(fastener.torque_min, fastener.torque_max);
    if ((least && *least < 0) || (most && *most < 0))
        return Message{"A torque limit is 0 or more.", {}};
    if (least && most && *least > *most)
        return Message{"The lower limit {0} is above the upper limit {1}.",
                       {plain(*least), plain(*most)}};
    if (fastener.torque_drag && *fastener.torque_drag < 0)
        return Message{"A drag is a torque of 0 or more.", {}};
    if (fastener.torque_drag && most && *fastener.torque_drag > *most)
        return dragTooLarge(fastener, *most);
    return std::nullopt;
}

Result<double, Message> wrenchFor(double value, double drag, double lever, double extension)
{
    return workshop::wrenchSetting(value + drag, lever, extension);
}

} // namespace lastrivet::fasteners
