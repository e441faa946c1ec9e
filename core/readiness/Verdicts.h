// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"
#include "core/readiness/Ground.h"
#include "core/readiness/Judgement.h"

#include <map>
#include <optional>
#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// Judges closings at moments, and remembers each verdict: a closing depends on those inside it.
class Verdicts {
public:
    Verdicts(const Ground &ground, const Profile &profile, Moment asOf);

    Moment asOf() const { return m_asOf; }
    const Ground &ground() const { return m_ground; }
    const Profile &profile() const { return m_profile; }

    /// What stands in the way at the moment, sorted; nothing for a factory-made closing. `closing`
    /// is a position in `Ground::closings`, here and below.
    const std::vector<Blocker> &blockers(std::size_t closing, Moment at);
    /// When it was last closed, if it is closed at the moment.
    std::optional<Moment> closingMoment(std::size_t closing, Moment at) const;
    /// True when something stood in the way at the moment `closed`, or the factory's document is
    /// required and missing; unless the closing was accepted since.
    bool isClosedEarly(std::size_t closing, Moment closed);

    /// As `blockers`, moved out instead of remembered. To be called last for this closing.
    std::vector<Blocker> handOver(std::size_t closing, Moment at);

private:
    struct EarlierMoment {
        bool operator()(const std::pair<std::size_t, Moment> &a,
                        const std::pair<std::size_t, Moment> &b) const
        {
            return a.first != b.first ? a.first < b.first : sortsBefore(a.second, b.second);
        }
    };

    bool isAcceptedLate(const Closing &closing, Moment closed) const;

    const Ground &m_ground;
    const Profile &m_profile;
    Moment m_asOf;
    std::map<std::pair<std::size_t, Moment>, std::vector<Blocker>, EarlierMoment> m_judged;
};

/// The state of a closing that is not closed, from what stands in its way.
State openState(const std::vector<Blocker> &blockers);

/// Sorts by rule, id and record name.
void sortBlockers(std::vector<Blocker> &blockers);

} // namespace lastrivet::readiness
