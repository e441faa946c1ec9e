// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Verdicts.h"

#include "core/readiness/rules/Rules.h"

#include <algorithm>

namespace lastrivet::readiness {

Verdicts::Verdicts(const Ground &ground, const Profile &profile, Moment asOf)
    : m_ground(ground)
    , m_profile(profile)
    , m_asOf(asOf)
{
}

const std::vector<Blocker> &Verdicts::blockers(std::size_t closing, Moment at)
{
    // The entry is made before judging, so that the recursion ends even in a broken project whose
    // closings enclose each other.
    const auto [entry, isNew] = m_judged.try_emplace(std::pair{closing, at});
    const Closing &record = *m_ground.closings[closing].closing;
    if (!isNew || record.made_by == MadeBy::Factory)
        return entry->second;
    std::vector<Blocker> found;
    Findings findings(found);
    const Judgement judgement(m_ground, m_profile, *this, closing, at, m_asOf);
    for (const rules::Entry &rule : rules::all()) {
        findings.beginRule(rule.rule);
        rule.find(judgement, findings);
    }
    if (!record.permanent) {
        for (Blocker &blocker : found)
            blocker.weight = Weight::Should;
    }
    sortBlockers(found);
    return entry->second = std::move(found);
}

std::vector<Blocker> Verdicts::handOver(std::size_t closing, Moment at)
{
    blockers(closing, at);
    return std::move(m_judged.extract({closing, at}).mapped());
}

std::optional<Moment> Verdicts::closingMoment(std::size_t closing, Moment at) const
{
    std::optional<Moment> closed;
    for (const Closing::Event &event : m_ground.closings[closing].closing->events) {
        const auto &moment = event.closed_on ? event.closed_on : event.opened_on;
        if (happened(moment, at) && happened(moment, m_asOf))
            closed = event.closed_on;
    }
    return closed;
}

bool Verdicts::isClosedEarly(std::size_t closing, Moment closed)
{
    const ClosingGround &here = m_ground.closings[closing];
    if (isAcceptedLate(*here.closing, closed))
        return false;
    if (here.closing->made_by == MadeBy::Factory)
        return m_profile.factory_closing_needs_document && !here.hasDocument;
    const auto &found = blockers(closing, closed);
    return std::any_of(found.begin(), found.end(),
                       [](const Blocker &blocker) { return blocker.weight == Weight::Must; });
}

bool Verdicts::isAcceptedLate(const Closing &closing, Moment closed) const
{
    return std::any_of(
        closing.late_acceptances.begin(), closing.late_acceptances.end(), [&](Id<SignOff> id) {
            const SignOff *signOff = m_ground.records.findLive(id);
            return signOff && isAccepted(*signOff) && happened(signOff->signed_on, m_asOf) &&
                   !after(closed, *signOff->signed_on);
        });
}

State openState(const std::vector<Blocker> &blockers)
{
    State state = State::Clear;
    for (const Blocker &blocker : blockers) {
        if (blocker.weight != Weight::Must)
            continue;
        if (!blocker.waits_for)
            return State::Hold;
        const bool waitsForBuilder = blocker.waits_for == SignerRole::Builder;
        state = std::max(state, waitsForBuilder ? State::ReadyToSign : State::ReadyToInspect);
    }
    return state;
}

void sortBlockers(std::vector<Blocker> &blockers)
{
    std::sort(blockers.begin(), blockers.end(), [](const Blocker &a, const Blocker &b) {
        if (a.rule != b.rule)
            return a.rule < b.rule;
        if (a.record.id != b.record.id)
            return a.record.id < b.record.id;
        return word(a.record.type) < word(b.record.type);
    });
}

} // namespace lastrivet::readiness
