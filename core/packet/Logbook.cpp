// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/Logbook.h"

#include "core/packet/Chosen.h"
#include "core/packet/InWords.h"
#include "core/packet/LogPhotos.h"
#include "core/packet/Places.h"
#include "core/records/invariants/Ancestors.h"

#include <chrono>
#include <limits>
#include <map>
#include <utility>

namespace lastrivet::packet {

namespace {

/// The key of a chapter: year and month, or the place in the tree.
using ChapterKey = std::pair<std::size_t, std::size_t>;

class Binding {
public:
    Binding(const Records &records, const Profile &profile, const LogbookChoice &choice,
            const WrittenOn &writtenOn)
        : m_records(records)
        , m_profile(profile)
        , m_choice(choice)
        , m_writtenOn(writtenOn)
        , m_places(placesInTree(records))
        , m_sessions(chosenSessions())
    {
    }

    Logbook logbook();

private:
    struct Draft {
        Logbook::Chapter chapter;
        std::vector<const WorkSession *> sessions;
    };

    std::vector<const WorkSession *> chosenSessions() const;
    Draft &draftFor(std::optional<Moment> day, Id<Component> part);
    std::size_t placeOf(Id<Component> part) const;
    Logbook::Entry entryOf(const WorkSession &session);
    void addEntries();
    void addPhotos();
    void addParts();
    std::string usualPlace() const;

    const Records &m_records;
    const Profile &m_profile;
    const LogbookChoice &m_choice;
    const WrittenOn &m_writtenOn;
    std::map<Id<Component>, std::size_t> m_places;
    std::vector<const WorkSession *> m_sessions;
    std::map<ChapterKey, Draft> m_drafts;
    Logbook m_book;
};

std::vector<const WorkSession *> Binding::chosenSessions() const
{
    return chosenFrom(
        m_records.work_sessions,
        [&](const WorkSession &session) {
            return session.began && (!m_choice.from || !after(*m_choice.from, *session.began)) &&
                   (!m_choice.until || !after(*session.began, *m_choice.until));
        },
        [](const WorkSession &) { return 0; },
        [](const WorkSession &session) { return session.began; });
}

/// Work on no part comes behind all parts.
std::size_t Binding::placeOf(Id<Component> part) const
{
    const auto place = m_places.find(part);
    return !part || place == m_places.end() ? std::numeric_limits<std::size_t>::max()
                                            : place->second;
}

Binding::Draft &Binding::draftFor(std::optional<Moment> day, Id<Component> part)
{
    if (m_choice.order == LogOrder::ByPart) {
        Draft &draft = m_drafts[{placeOf(part), 0}];
        draft.chapter.part = m_records.findLive(part) ? partPath(m_records, part) : std::string();
        return draft;
    }
    const std::chrono::year_month_day date{day->day()};
    const int year = int(date.year());
    const unsigned month = unsigned(date.month());
    Draft &draft = m_drafts[{std::size_t(year), month}];
    draft.chapter.year = year;
    draft.chapter.month = int(month);
    return draft;
}

Logbook::Entry Binding::entryOf(const WorkSession &session)
{
    Logbook::Entry entry;
    entry.session = sessionOf(m_records, session);
    entry.changed_inspected = session.changed_inspected == true;
    const auto written = m_writtenOn(session.id);
    if (written && (written->day() - session.began->day()).count() > m_profile.late_entry_days) {
        entry.written_late_on = written->dayOnly();
        ++m_book.late_entries;
    }
    m_book.without_time += session.minutes ? 0 : 1;
    return entry;
}

void Binding::addEntries()
{
    for (const WorkSession *session : m_sessions) {
        Draft &draft = draftFor(session->began, session->component_id);
        draft.sessions.push_back(session);
        draft.chapter.entries.push_back(entryOf(*session));
    }
    for (auto &[key, draft] : m_drafts)
        draft.chapter.total = hours::totals(m_records, draft.sessions).total;
}

/// Numbers count through the whole book, in the order in which the photographs are printed.
void Binding::addPhotos()
{
    const LogPhotos photos(m_records, m_sessions);
    std::map<Id<Media>, Id<WorkSession>> owners;
    for (const Media *media : photos.chosen(m_choice)) {
        const WorkSession *entry = photos.entryFor(*media);
        Draft &draft = entry ? draftFor(entry->began, entry->component_id)
                             : draftFor(dayOf(*media), photos.partFor(*media));
        draft.chapter.photos.push_back(photos.photoOf(*media));
        if (entry)
            owners.emplace(media->id, entry->id);
    }
    int number = 0;
    for (auto &[key, draft] : m_drafts) {
        std::map<Id<WorkSession>, std::vector<int>> numbers;
        for (Photo &photo : draft.chapter.photos) {
            photo.number = ++number;
            const auto owner = owners.find(photo.id);
            if (owner != owners.end())
                numbers[owner->second].push_back(photo.number);
        }
        for (Logbook::Entry &entry : draft.chapter.entries)
            entry.photos = numbers[entry.session.id];
    }
}

void Binding::addParts()
{
    std::map<std::size_t, Logbook::PartHours> rows;
    for (const hours::ComponentHours &part : m_book.totals.components) {
        Logbook::PartHours &row = rows[placeOf(part.id)];
        row.name = partName(m_records, part.id);
        row.own = part.own;
        row.with_below = part.with_below;
        invariants::anyUpwards(m_records, m_records.find(part.id)->parent_id,
                               [&row](const Component &above) {
                                   if (above.withdrawn_on)
                                       return true;
                                   ++row.depth;
                                   return false;
                               });
    }
    for (auto &[place, row] : rows)
        m_book.parts.push_back(std::move(row));
}

std::string Binding::usualPlace() const
{
    std::map<std::string_view, std::size_t> places;
    for (const WorkSession *session : m_sessions) {
        if (!session->place.empty() && 2 * ++places[session->place] > m_sessions.size())
            return session->place;
    }
    return {};
}

Logbook Binding::logbook()
{
    m_book.usual_place = usualPlace();
    m_book.aircraft = aircraftOf(m_records, m_profile);
    m_book.choice = m_choice;
    m_book.late_after_days = m_profile.late_entry_days;
    m_book.totals = hours::totals(m_records, m_sessions);
    addEntries();
    addPhotos();
    addParts();
    for (const hours::PersonHours &person : m_book.totals.people)
        m_book.people.push_back(personName(m_records, person.id));
    for (auto &[key, draft] : m_drafts)
        m_book.chapters.push_back(std::move(draft.chapter));
    return std::move(m_book);
}

} // namespace

Logbook logbookOf(const Records &records, const Profile &profile, const LogbookChoice &choice,
                  const WrittenOn &writtenOn)
{
    return Binding(records, profile, choice, writtenOn).logbook();
}

} // namespace lastrivet::packet
