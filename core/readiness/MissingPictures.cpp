// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/MissingPictures.h"

#include "core/evidence/PartsOf.h"
#include "core/readiness/Ground.h"

#include <algorithm>
#include <set>
#include <utility>

namespace lastrivet::readiness {

namespace {

bool isOpen(const ClosingAnswer &answer)
{
    return answer.begun && !isClosed(answer.state);
}

std::vector<MissingPictures::OfClosing> closingsThatLack(const Answer &answer)
{
    std::vector<MissingPictures::OfClosing> found;
    for (const ClosingAnswer &closing : answer.closings) {
        if (!isOpen(closing))
            continue;
        MissingPictures::OfClosing lacking{closing.id, {}, closing.on_record.photos};
        for (const Blocker &blocker : closing.blockers) {
            if (blocker.rule == Rule::TooFewPhotos || blocker.rule == Rule::StalePhotos)
                lacking.rules.push_back(blocker.rule);
        }
        if (!lacking.rules.empty())
            found.push_back(std::move(lacking));
    }
    return found;
}

bool isWork(const Logged &entry)
{
    return entry.record->kind != WorkKind::Inspection && entry.record->kind != WorkKind::Planning;
}

/// The places of the parts that a permanent closing will hide.
std::set<Place> placesToBeHidden(const Ground &ground, const Answer &answer)
{
    std::set<Place> places;
    for (const ClosingAnswer &closing : answer.closings) {
        const Closing *known = ground.records.find(closing.id);
        if (!isOpen(closing) || !known || !known->permanent || known->scope != ClosingScope::Region)
            continue;
        for (const Id<Component> part : closing.reach) {
            if (const auto place = ground.tree.placeOf(part))
                places.insert(*place);
        }
    }
    return places;
}

} // namespace

MissingPictures missingPictures(const Records &records, const Answer &answer)
{
    MissingPictures missing{closingsThatLack(answer), {}, {}};
    const Ground ground(records);
    for (const Place place : placesToBeHidden(ground, answer)) {
        if (std::ranges::any_of(ground.sessions.at(place), isWork) &&
            ground.pictures.in(ground.tree.subtree(place)).empty())
            missing.parts.push_back(ground.tree.part(place).id);
    }
    for (const Media &media : records.media) {
        if (isLive(media) && evidence::isUnassigned(records, media))
            missing.unassigned.push_back(media.id);
    }
    return missing;
}

} // namespace lastrivet::readiness
