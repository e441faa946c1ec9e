// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/stores/Lots.h"

#include "core/stores/Soon.h"

#include <algorithm>

namespace lastrivet::stores {

namespace {

constexpr int lastMinuteOfDay = 24 * 60 - 1;

LotState stateOf(const std::optional<std::int64_t> &daysLeft)
{
    if (!daysLeft)
        return LotState::WithoutDate;
    if (*daysLeft < 0)
        return LotState::Expired;
    return *daysLeft <= soonDays ? LotState::ExpiresSoon : LotState::Good;
}

/// The later first; of one moment, the later entered.
bool isNewer(const MaterialUse &a, const MaterialUse &b)
{
    if (*a.used_on == *b.used_on)
        return a.id > b.id;
    return sortsBefore(*b.used_on, *a.used_on);
}

/// An answer may be older than the records: a closing that is gone since holds nothing.
IdSet<Closing> closingsHeldBy(Id<MaterialUse> use, const Records &records,
                              const readiness::Answer &answer)
{
    const RecordRef record{RecordType::MaterialUse, use.value()};
    IdSet<Closing> held;
    for (const auto &closing : answer.closings) {
        const bool isHeld =
            std::any_of(closing.blockers.begin(), closing.blockers.end(), [&](const auto &blocker) {
                return blocker.rule == readiness::Rule::CuringMaterial && blocker.record == record;
            });
        if (isHeld && !isClosed(closing.state) && records.findLive(closing.id))
            held.push_back(closing.id);
    }
    return held;
}

} // namespace

LotStanding standingOf(const MaterialLot &lot, const Records &records, Moment asOf)
{
    LotStanding standing;
    if (lot.expires_on)
        standing.days_left = (lot.expires_on->day() - asOf.day()).count();
    standing.state = stateOf(standing.days_left);
    std::vector<const MaterialUse *> uses;
    for (const MaterialUse &use : records.material_uses) {
        const bool isOfLot =
            std::find(use.lot_ids.begin(), use.lot_ids.end(), lot.id) != use.lot_ids.end();
        if (use.withdrawn_on || !isOfLot || !happened(use.used_on, asOf))
            continue;
        uses.push_back(&use);
        const bool wasExpired = lot.expires_on && after(*use.used_on, *lot.expires_on);
        standing.used_expired += wasExpired && !happened(use.accepted_on, asOf) ? 1 : 0;
    }
    std::sort(uses.begin(), uses.end(),
              [](const MaterialUse *a, const MaterialUse *b) { return isNewer(*a, *b); });
    for (const MaterialUse *use : uses)
        standing.uses.push_back(use->id);
    return standing;
}

Cure cureOf(const MaterialUse &use, Moment now)
{
    Cure cure{use.id};
    if (!use.cure_minutes || use.cure_minutes->count() <= 0 || !use.used_on)
        return cure;
    const auto from =
        use.used_on->hasTime() ? use.used_on : Moment::ofTime(use.used_on->day(), lastMinuteOfDay);
    cure.ends = from->plusMinutes(use.cure_minutes->count());
    cure.is_running = !cure.ends || after(*cure.ends, now);
    return cure;
}

std::vector<HeldByCure> running(const Records &records, const readiness::Answer &answer, Moment now)
{
    std::vector<HeldByCure> found;
    for (const MaterialUse &use : records.material_uses) {
        if (use.withdrawn_on || !happened(use.used_on, now))
            continue;
        if (const auto cure = cureOf(use, now); cure.is_running)
            found.push_back({cure, closingsHeldBy(use.id, records, answer)});
    }
    std::stable_sort(found.begin(), found.end(), [](const HeldByCure &a, const HeldByCure &b) {
        // What ends beyond the calendar is done last.
        if (!a.cure.ends || !b.cure.ends)
            return !a.cure.ends && b.cure.ends;
        return sortsBefore(*b.cure.ends, *a.cure.ends);
    });
    return found;
}

} // namespace lastrivet::stores
