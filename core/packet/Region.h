// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Moment.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <cstddef>
#include <map>
#include <optional>
#include <vector>

namespace lastrivet::packet {

/// What lies within the reach of the chosen closings, as of the moment of the answer.
class Region {
public:
    /// A closing that the packet is made for, with what the engine answers for it.
    struct Chosen {
        const Closing *closing;
        const readiness::ClosingAnswer *answer;
    };

    /// Closings that the answer does not know are left out.
    Region(const Records &records, const readiness::Answer &answer, const IdSet<Closing> &chosen);

    /// Everything on record, with every closing; of no part, too.
    static Region ofWholeAircraft(const Records &records, const readiness::Answer &answer);

    const Records &records() const { return *m_records; }
    Moment asOf() const { return m_asOf; }
    /// By id.
    const std::vector<Chosen> &chosen() const { return m_chosen; }
    bool isChosen(Id<Closing> id) const;

    bool holds(Id<Component> part) const;
    /// True when one of the parts is held; of no part at all, when the region is the whole
    /// aircraft.
    bool holdsAny(const IdSet<Component> &parts) const;
    /// True when its part is held; of one on no part at all, when the region is the whole aircraft.
    bool holds(const Squawk &squawk) const;
    /// True when a blocker of a chosen closing is about the record.
    bool isNamedByBlocker(RecordRef record) const;
    /// True when the record is one of the chosen closings, or belongs to them or to a held part;
    /// a squawk, deviation or bulletin of no part belongs to the whole aircraft.
    bool holds(RecordRef record) const;
    /// The part a record belongs to; none for records of no part, or of several.
    Id<Component> partOf(RecordRef record) const;

    /// The moment when it happened by the moment of the answer, else none.
    std::optional<Moment> ifHappened(const std::optional<Moment> &moment) const;
    /// The place of a part in the tree read from the top, for sorting; no part comes first.
    std::size_t placeOf(Id<Component> part) const;

private:
    const Records *m_records;
    Moment m_asOf;
    std::vector<Chosen> m_chosen;
    /// True when one of the chosen closings is the one of scope aircraft.
    bool m_isWholeAircraft = false;
    IdSet<Component> m_parts;
    std::vector<RecordRef> m_named;
    std::map<Id<Component>, std::size_t> m_places;
};

} // namespace lastrivet::packet
