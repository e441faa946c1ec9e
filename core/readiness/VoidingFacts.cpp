// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/VoidingFacts.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

/// Gathers the facts for one signature, one type of record after the other.
class Gatherer {
public:
    Gatherer(const Judgement &judgement, const SignOff &signOff)
        : m_judgement(judgement)
        , m_ground(judgement.ground())
        , m_signOff(signOff)
    {
    }

    void gatherWork()
    {
        m_judgement.forEachIn(m_ground.sessions, [this](const Logged &entry) {
            if (!isAfterwards(entry.ended))
                return;
            const WorkSession &session = *entry.record;
            const bool isLooking =
                session.kind == WorkKind::Inspection || session.kind == WorkKind::Planning;
            if (!isLooking && session.changed_inspected != false && !isForgiven(session))
                add(session, entry.ended, session.changed_inspected.has_value());
        });
        m_judgement.forEachIn(m_ground.steps, [this](const Step *step) {
            if (isAfterwards(step->done_on) && !m_judgement.isExcused(*step) && !closesInner(step))
                add(*step, step->done_on);
        });
    }

    void gatherPapers()
    {
        m_judgement.forEachSquawk([this](const Squawk &squawk) {
            if (squawk.severity == Severity::Cosmetic || isOwnFinding(squawk))
                return;
            add(squawk, squawk.found_on);
            add(squawk, squawk.fixed_on);
        });
        for (const Deviation *deviation : m_judgement.deviations()) {
            add(*deviation, deviation->raised_on);
            add(*deviation, deviation->built_on);
            add(*deviation, deviation->undone_on);
        }
        for (const Bulletin *bulletin : m_judgement.bulletins())
            add(*bulletin, bulletin->complied_on);
    }

    void gatherParts()
    {
        m_judgement.forEachIn(m_ground.fasteners, [this](const OfStep<Fastener> &entry) {
            const Fastener &fastener = *entry.record;
            for (const auto &moment :
                 {fastener.fitted_on, fastener.torqued_on, fastener.removed_on}) {
                if (isAfterwards(moment) && !m_judgement.isExcused(entry))
                    add(fastener, moment);
            }
        });
        m_judgement.forEachIn(m_ground.material_uses, [this](const OfStep<MaterialUse> &entry) {
            if (isAfterwards(entry.record->used_on) && !m_judgement.isExcused(entry) &&
                !closesInner(entry.step))
                add(*entry.record, entry.record->used_on);
        });
    }

    void gatherOpenings()
    {
        addOpenings(m_judgement.closing());
        for (const std::size_t inner : m_judgement.here().inner)
            addOpenings(*m_ground.closings[inner].closing);
    }

    /// After a tool and debris check, another signature or closing work on a later day may have
    /// left something inside again.
    void gatherVisits(const HoldPoint &point)
    {
        for (const HoldPoint *other : m_judgement.here().hold_points) {
            if (other == &point)
                continue;
            for (const SignOff *signOff : m_ground.signOffs(other->id))
                addOnLaterDay(*signOff, *signOff->signed_on);
        }
        for (const Step *step : m_judgement.here().closing_steps) {
            for (const WorkSession *session : m_ground.closingWork(step->id)) {
                if (!isOnOwnFinding(*session))
                    addOnLaterDay(*session, endOf(*session));
            }
        }
    }

    std::vector<Fact> sorted()
    {
        std::sort(m_facts.begin(), m_facts.end(), [](const Fact &a, const Fact &b) {
            if (a.record.type != b.record.type)
                return word(a.record.type) < word(b.record.type);
            if (a.record.id != b.record.id)
                return a.record.id < b.record.id;
            return sortsBefore(a.moment, b.moment);
        });
        return std::move(m_facts);
    }

private:
    bool isAfterwards(const std::optional<Moment> &moment) const
    {
        return m_judgement.counts(moment) && after(*moment, *m_signOff.signed_on);
    }

    template <class Record>
    void add(const Record &record, const std::optional<Moment> &moment, bool isHeavy = true)
    {
        if (isAfterwards(moment))
            m_facts.push_back({{Record::type, record.id.value()}, *moment, isHeavy});
    }

    template <class Record> void addOnLaterDay(const Record &record, Moment moment)
    {
        if (moment.day() > m_signOff.signed_on->day())
            add(record, moment, false);
    }

    void addOpenings(const Closing &closing)
    {
        for (const Closing::Event &event : closing.events)
            add(closing, event.opened_on);
    }

    /// The signature allowed for it.
    bool closesInner(const Step *step) const { return step && m_judgement.closesInner(*step); }

    /// A finding of the same inspection, which the inspector knew of.
    bool isOwnFinding(const Squawk &squawk) const
    {
        return m_signOff.inspection_id && squawk.inspection_id == m_signOff.inspection_id;
    }

    bool isOnOwnFinding(const WorkSession &session) const
    {
        const Squawk *squawk = m_ground.records.findLive(session.squawk_id);
        return squawk && isOwnFinding(*squawk);
    }

    bool isForgiven(const WorkSession &session) const
    {
        return m_judgement.isExcused(session) ||
               closesInner(m_ground.records.findLive(session.step_id)) || isOnOwnFinding(session);
    }

    const Judgement &m_judgement;
    const Ground &m_ground;
    const SignOff &m_signOff;
    std::vector<Fact> m_facts;
};

} // namespace

std::vector<Fact> voidingFacts(const Judgement &judgement, const HoldPoint &point,
                               const SignOff &signOff)
{
    Gatherer gatherer(judgement, signOff);
    gatherer.gatherWork();
    gatherer.gatherPapers();
    gatherer.gatherParts();
    gatherer.gatherOpenings();
    if (point.kind == HoldPointKind::ToolAndDebrisCheck)
        gatherer.gatherVisits(point);
    return gatherer.sorted();
}

} // namespace lastrivet::readiness
