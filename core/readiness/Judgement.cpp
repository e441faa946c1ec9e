// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Judgement.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

template <class Record> void sortOut(std::vector<const Record *> &records)
{
    std::sort(records.begin(), records.end(),
              [](const Record *a, const Record *b) { return a->id < b->id; });
    records.erase(std::unique(records.begin(), records.end()), records.end());
}

} // namespace

Judgement::Judgement(const Ground &ground, const Profile &profile, Verdicts &verdicts,
                     std::size_t closing, Moment at, Moment asOf, Looking looking)
    : Reckoning(at, asOf)
    , m_ground(ground)
    , m_profile(profile)
    , m_verdicts(verdicts)
    , m_closing(closing)
    , m_looking(looking)
{
}

bool Judgement::holdsThis(const IdSet<Closing> &closings) const
{
    return std::binary_search(closings.begin(), closings.end(), closing().id);
}

bool Judgement::isExcused(const Step &step) const
{
    return step.closes == closing().id || holdsThis(step.may_follow);
}

bool Judgement::isExcused(const Check &check) const
{
    return holdsThis(check.may_follow);
}

bool Judgement::isExcused(const WorkSession &session) const
{
    const Step *step = m_ground.records.findLive(session.step_id);
    return step && isExcused(*step);
}

bool Judgement::reaches(Id<Component> part) const
{
    const auto place = m_ground.tree.placeOf(part);
    return place && holds(here().reach, *place);
}

bool Judgement::closesInner(const Step &step) const
{
    const auto closed = m_ground.closingIndex(step.closes);
    return closed && std::binary_search(here().inner.begin(), here().inner.end(), *closed);
}

std::vector<const Deviation *> Judgement::deviations() const
{
    std::vector<const Deviation *> all;
    forEachIn(m_ground.deviations, [&](const Deviation *deviation) { all.push_back(deviation); });
    if (here().isAircraft)
        all.insert(all.end(), m_ground.deviations_without_place.begin(),
                   m_ground.deviations_without_place.end());
    sortOut(all);
    return all;
}

std::vector<const Bulletin *> Judgement::bulletins() const
{
    std::vector<const Bulletin *> all;
    forEachIn(m_ground.bulletins, [&](const Bulletin *bulletin) { all.push_back(bulletin); });
    if (here().isAircraft)
        all.insert(all.end(), m_ground.bulletins_without_place.begin(),
                   m_ground.bulletins_without_place.end());
    sortOut(all);
    return all;
}

const Photos &Judgement::photos() const
{
    if (!m_photos)
        m_photos = countPhotos();
    return *m_photos;
}

Photos Judgement::countPhotos() const
{
    Photos found;
    std::vector<const Media *> several;
    const auto add = [&](const Picture &picture) {
        if (!counts(picture.when))
            return;
        found.latest = std::max(found.latest, std::optional(picture.when->day()));
        if (picture.isSeveral)
            several.push_back(picture.media);
        else
            ++found.count;
    };
    for (const Picture &picture : here().pictures)
        add(picture);
    forEachIn(m_ground.pictures, add);
    if (here().isAircraft)
        std::for_each(m_ground.pictures_without_place.begin(),
                      m_ground.pictures_without_place.end(), add);
    sortOut(several);
    found.count += std::int64_t(several.size());
    return found;
}

const SignOff *Judgement::latestSignOff(const HoldPoint &point) const
{
    std::vector<const SignOff *> counted;
    for (const SignOff *signOff : m_ground.signOffs(point.id)) {
        if (counts(signOff->signed_on))
            counted.push_back(signOff);
    }
    return latestOf(counted, [](const SignOff &signOff) { return *signOff.signed_on; });
}

} // namespace lastrivet::readiness
