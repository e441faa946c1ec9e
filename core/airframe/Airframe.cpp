// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/airframe/Airframe.h"

#include "core/readiness/PartTree.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace lastrivet::airframe {

using namespace readiness;

namespace {

constexpr std::size_t zoneCount = Words<Zone>::list.size();

/// Higher is worse. A closing that was not begun counts less than any that calls for something,
/// and more than one that is done with.
int badness(const ClosingAnswer &closing)
{
    switch (closing.state) {
    case State::Closed:
        return 0;
    case State::ClosedEarly:
        return 6;
    default:
        break;
    }
    if (!closing.begun)
        return 1;
    switch (closing.state) {
    case State::Hold:
        return 5;
    case State::ReadyToInspect:
        return 4;
    case State::ReadyToSign:
        return 3;
    default:
        return 2;
    }
}

std::int64_t mustBlockers(const ClosingAnswer &closing)
{
    return std::ranges::count(closing.blockers, Weight::Must, &Blocker::weight);
}

/// Puts parts and closings into zones.
class Sorter {
public:
    Sorter(const Records &records, const Answer &answer, AircraftKind kind)
        : m_records(records)
        , m_answer(answer)
        , m_places(records)
    {
        m_airframe.kind = kind;
        for (std::size_t i = 0; i < zoneCount; ++i)
            m_zones[i].zone = Zone(i);
    }

    Airframe sorted()
    {
        addParts();
        for (const ClosingAnswer &closing : m_answer.closings) {
            const Closing *record = m_records.find(closing.id);
            if (record && record->scope == ClosingScope::Region)
                addClosing(closing, *record);
        }
        keepDrawn();
        return std::move(m_airframe);
    }

private:
    ZoneSet zonesOf(Id<Component> part) const
    {
        return zonesAt(m_places.of(part), m_airframe.kind);
    }

    void addParts()
    {
        const PartTree tree(m_records.components);
        for (readiness::Place i = 0; i < tree.size(); ++i) {
            const Id<Component> part = tree.part(i).id;
            const ZoneSet zones = zonesOf(part);
            if (zones.isEmpty())
                m_airframe.elsewhere.push_back(part);
            for (ZoneStanding &standing : m_zones) {
                if (!zones.contains(standing.zone))
                    continue;
                ++standing.parts;
                if (!standing.part)
                    standing.part = part;
            }
        }
    }

    void addClosing(const ClosingAnswer &closing, const Closing &record)
    {
        const ZoneSet own = zonesOf(record.component_id);
        if (own.isEmpty() && closing.begun && mustStayOpen(closing.state))
            ++m_airframe.open_elsewhere;
        std::array<bool, zoneCount> isIn{};
        const auto enter = [&isIn](ZoneSet zones) {
            for (std::size_t i = 0; i < zoneCount; ++i)
                isIn[i] = isIn[i] || zones.contains(Zone(i));
        };
        enter(own);
        for (const auto part : record.encloses)
            enter(zonesOf(part));
        for (std::size_t i = 0; i < zoneCount; ++i) {
            if (isIn[i])
                worsen(m_zones[i], closing, record);
        }
    }

    void worsen(ZoneStanding &standing, const ClosingAnswer &closing, const Closing &record)
    {
        ++standing.closings;
        const auto *worst = standing.worst ? m_answer.closing(standing.worst) : nullptr;
        const auto rank = [](const ClosingAnswer &of) {
            return std::tuple(-badness(of), mustBlockers(of));
        };
        if (worst && rank(*worst) <= rank(closing))
            return;
        standing.state = closing.state;
        standing.begun = closing.begun;
        standing.worst = closing.id;
        standing.part = record.component_id;
    }

    /// Most aeroplanes have a wheel under the nose or under the tail, not both.
    std::optional<Zone> wheelLeftOut() const
    {
        const bool hasNose = m_zones[std::size_t(Zone::NoseWheel)].parts > 0;
        const bool hasTail = m_zones[std::size_t(Zone::TailWheel)].parts > 0;
        if (hasNose && hasTail)
            return std::nullopt;
        if (hasNose || hasTail)
            return hasTail ? Zone::NoseWheel : Zone::TailWheel;
        const bool isTaildragger =
            m_airframe.kind == AircraftKind::HighWing || m_airframe.kind == AircraftKind::Biplane;
        return isTaildragger ? Zone::NoseWheel : Zone::TailWheel;
    }

    void keepDrawn()
    {
        ZoneSet drawn = zonesDrawn(m_airframe.kind);
        if (const auto leftOut = wheelLeftOut())
            drawn.remove(*leftOut);
        for (const ZoneStanding &standing : m_zones) {
            if (drawn.contains(standing.zone))
                m_airframe.zones.push_back(standing);
        }
    }

    const Records &m_records;
    const Answer &m_answer;
    PartPlaces m_places;
    std::array<ZoneStanding, zoneCount> m_zones{};
    Airframe m_airframe;
};

} // namespace

Airframe airframe(const Records &records, const Answer &answer, AircraftKind kind)
{
    return Sorter(records, answer, kind).sorted();
}

} // namespace lastrivet::airframe
