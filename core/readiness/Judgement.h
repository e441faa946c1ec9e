// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/readiness/Ground.h"
#include "core/readiness/LatestOf.h"
#include "core/readiness/Reckoning.h"
#include "core/readiness/SignOffs.h"

#include <chrono>
#include <cstdint>
#include <optional>
#include <vector>

namespace lastrivet::readiness {

class Verdicts;

/// Which records a rule looks at: those that count for the closing, or those excused from it.
enum class Looking { AtWhatCounts, AtWhatIsExcused };

/// How many distinct pictures there are, and the day of the newest one.
struct Photos {
    std::int64_t count = 0;
    std::optional<std::chrono::sys_days> latest;
};

/// All that a rule may look at: one closing at one moment, with what counts for it, what is excused
/// from it, and what lies within its reach.
class Judgement : public Reckoning {
public:
    Judgement(const Ground &ground, const Profile &profile, Verdicts &verdicts, std::size_t closing,
              Moment at, Moment asOf, Looking looking = Looking::AtWhatCounts);

    const Ground &ground() const { return m_ground; }
    const Profile &profile() const { return m_profile; }
    Verdicts &verdicts() const { return m_verdicts; }
    const ClosingGround &here() const { return m_ground.closings[m_closing]; }
    const Closing &closing() const { return *here().closing; }
    bool isExcused(const Step &step) const;
    bool isExcused(const Check &check) const;
    bool isExcused(const WorkSession &session) const;
    /// For records with a step and closings that they may follow themselves.
    template <class Record> bool isExcused(const OfStep<Record> &entry) const
    {
        return holdsThis(entry.record->may_follow) || (entry.step && isExcused(*entry.step));
    }
    /// True when the record is one of those that are looked at.
    template <class Entry> bool concerns(const Entry &entry) const
    {
        return isExcused(entry) == (m_looking == Looking::AtWhatIsExcused);
    }

    bool reaches(Id<Component> part) const;
    /// True when the step closes one of the closings inside.
    bool closesInner(const Step &step) const;
    /// Calls `body` with every entry filed in the reach.
    template <class Entry, class Body>
    void forEachIn(const ByPlace<Entry> &filed, Body &&body) const
    {
        for (const Stretch &stretch : here().reach) {
            for (const Entry &entry : filed.in(stretch))
                body(entry);
        }
    }
    /// Calls `body` with every squawk of the reach.
    template <class Body> void forEachSquawk(Body &&body) const
    {
        forEachIn(m_ground.squawks, [&](const Squawk *squawk) { body(*squawk); });
        if (here().isAircraft) {
            for (const Squawk *squawk : m_ground.squawks_without_place)
                body(*squawk);
        }
    }
    std::vector<const Deviation *> deviations() const;
    std::vector<const Bulletin *> bulletins() const;
    /// The pictures of the inside by this moment; counted once, since several rules ask.
    const Photos &photos() const;

    /// The latest sign-off of the hold point that counts, or null.
    const SignOff *latestSignOff(const HoldPoint &point) const;
    bool isWaived(const HoldPoint &point) const { return counts(point.waived_on); }

private:
    bool holdsThis(const IdSet<Closing> &closings) const;
    Photos countPhotos() const;

    const Ground &m_ground;
    const Profile &m_profile;
    Verdicts &m_verdicts;
    std::size_t m_closing;
    Looking m_looking;
    mutable std::optional<Photos> m_photos;
};

} // namespace lastrivet::readiness
