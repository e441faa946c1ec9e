// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/HandOver.h"

#include "core/hours/Hours.h"
#include "core/packet/InWords.h"
#include "core/packet/PartOrder.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace lastrivet::packet {

namespace {

/// The closings that hide each part, those of the smallest reach first.
std::map<Id<Component>, std::vector<HandOver::Hidden>>
closingsByPart(const readiness::Answer &answer, const Records &records)
{
    std::vector<const readiness::ClosingAnswer *> closings;
    for (const readiness::ClosingAnswer &closing : answer.closings)
        closings.push_back(&closing);
    std::stable_sort(closings.begin(), closings.end(), [](const auto *a, const auto *b) {
        return a->reach.size() < b->reach.size();
    });
    std::map<Id<Component>, std::vector<HandOver::Hidden>> hidden;
    for (const readiness::ClosingAnswer *closing : closings) {
        const Closing *record = records.findLive(closing->id);
        if (!record || record->scope == ClosingScope::Aircraft)
            continue;
        for (const Id<Component> part : closing->reach)
            hidden[part].push_back({record->title, closing->state, closing->begun});
    }
    return hidden;
}

std::vector<HandOver::Part> partsOf(const Records &records, const readiness::Answer &answer)
{
    auto hidden = closingsByPart(answer, records);
    std::vector<HandOver::Part> parts;
    for (const PartInOrder &next : partsInOrder(records)) {
        const Component &part = *next.part;
        parts.push_back({next.depth, part.code, part.name, part.part_number, part.serial_number,
                         part.plan_ref, std::move(hidden[part.id])});
    }
    return parts;
}

/// What was fitted by the moment of the book, as it stood then.
std::vector<HandOver::Fitted> equipmentOf(const Region &region)
{
    const Records &records = region.records();
    std::vector<HandOver::Fitted> fitted;
    for (const Equipment &item : records.equipment) {
        if (item.withdrawn_on || (item.fitted_on && after(*item.fitted_on, region.asOf())))
            continue;
        fitted.push_back({item.name, item.maker, item.part_number, item.serial_number,
                          partPath(records, item.component_id), item.fitted_on,
                          region.ifHappened(item.removed_on)});
    }
    return fitted;
}

/// The log entries of which something had happened by the moment of the book.
std::vector<const WorkSession *> workBy(const Records &records, Moment asOf)
{
    std::vector<const WorkSession *> sessions;
    for (const WorkSession &session : records.work_sessions) {
        if (!session.withdrawn_on && happened(session.began, asOf))
            sessions.push_back(&session);
    }
    return sessions;
}

void addHours(HandOver &book, const Records &records, Moment asOf)
{
    const auto sessions = workBy(records, asOf);
    const hours::Totals totals = hours::totals(records, sessions);
    book.total = totals.total.minutes;
    book.worker_total = totals.total.worker_minutes;
    for (const PartInOrder &next : partsInOrder(records)) {
        const auto found =
            std::find_if(totals.components.begin(), totals.components.end(),
                         [&](const hours::ComponentHours &row) { return row.id == next.part->id; });
        if (next.depth == 0 && found != totals.components.end())
            book.hours.push_back({partName(records, next.part->id), found->with_below.minutes,
                                  found->with_below.sessions});
    }
    if (totals.unassigned.sessions > 0)
        book.hours.push_back({{}, totals.unassigned.minutes, totals.unassigned.sessions});
    for (const WorkSession *session : sessions) {
        if (!book.first_work || sortsBefore(*session->began, *book.first_work))
            book.first_work = session->began;
        if (!book.last_work || sortsBefore(*book.last_work, *session->began))
            book.last_work = session->began;
    }
}

/// Receipts, packing lists and pictures of people tell nothing of the aircraft.
bool isOfTheAircraft(const Photo &photo)
{
    constexpr std::array others{RecordType::Project,     RecordType::Person,
                                RecordType::Expense,     RecordType::PartLine,
                                RecordType::MaterialLot, RecordType::CertificateDocument};
    const auto isOther = [&](RecordRef subject) {
        return std::find(others.begin(), others.end(), subject.type) != others.end();
    };
    return !photo.subjects.empty() && !photo.shows.contains(Shows::Receipt) &&
           std::none_of(photo.subjects.begin(), photo.subjects.end(), isOther);
}

std::vector<Photo> photosOf(const Region &region)
{
    std::vector<Photo> all = photos(region);
    std::erase_if(all, [](const Photo &photo) { return !isOfTheAircraft(photo); });
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i].number = int(i) + 1;
    return all;
}

Aircraft withoutAddress(Aircraft aircraft)
{
    aircraft.builder_address.clear();
    return aircraft;
}

Packet wholeAircraft(const Region &region, const Profile &profile)
{
    const std::vector<Photo> photos = photosOf(region);
    Packet whole{.title = {"Hand-over book", {}},
                 .as_of = region.asOf(),
                 .standings = standings(region, profile),
                 .photos = photos,
                 .squawks = squawks(region, photos),
                 .deviations = deviations(region, photos),
                 .bulletins = bulletins(region),
                 .fasteners = fasteners(region),
                 .measurements = measurements(region),
                 .materials = materials(region),
                 .tools = tools(region),
                 .cautions = profile.cautions};
    whole.front.aircraft = withoutAddress(aircraftOf(region.records(), profile));
    whole.work.people = workLog(region).people;
    return whole;
}

} // namespace

HandOver handOver(const Records &records, const Profile &profile, const readiness::Answer &answer)
{
    const Region region = Region::ofWholeAircraft(records, answer);
    HandOver book{.parts = partsOf(records, answer),
                  .equipment = equipmentOf(region),
                  .whole = wholeAircraft(region, profile),
                  .weight = weightReport(records, profile, region.asOf())};
    addHours(book, records, region.asOf());
    return book;
}

} // namespace lastrivet::packet
