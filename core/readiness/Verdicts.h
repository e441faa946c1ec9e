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

/// Judges closings at moments, each once: boxes within boxes ask for each other's verdicts.
class Verdicts {
public:
    Verdicts(const Ground &ground, const Profile &profile, Moment asOf);

    Moment asOf() const { return m_asOf; }
    const Ground &ground() const { return m_ground; }
    const Profile &profile() const { return m_profile; }

    /// What stands in the way at the moment, sorted; nothing for a factory-made closing.
    const std::vector<Blocker> &blockers(std::size_t closing, Moment at);
    /// When it was last closed, if it is closed at the moment.
    std::optional<Moment> closingMoment(std::size_t closing, Moment at) const;
    /// Closed at `closed` although something stood in the way, or by a factory whose document is
    /// wanted and not there; and not accepted since.
    bool isClosedEarly(std::size_t closing, Moment closed);

    /// `blockers`, which it forgets. To be called once nothing else is asked about this closing.
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
