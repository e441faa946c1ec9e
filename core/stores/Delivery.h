// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Records.h"

#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::stores {

/// How a line of a packing list stands against what was counted.
enum class LineState {
    Awaited,  ///< not counted yet
    Late,     ///< not counted yet, and it was expected before
    Missing,  ///< counted, and fewer came than the list says
    Damaged,  ///< all came, but fewer good ones than the list says
    Surplus,  ///< more good ones than the list says
    Complete, ///< as the list says, or with spares for what is damaged
};

/// How far a line of a packing list has come by a day.
struct LineStanding {
    LineState state = LineState::Awaited;
    /// Parts listed that have not come.
    std::int64_t missing = 0;
    /// Parts that came and are not usable.
    std::int64_t damaged = 0;
    /// Good parts that are still needed; the line holds closings open while there are any.
    std::int64_t wanted = 0;
    /// While good parts are still needed, how long it is overdue; else how late it came.
    std::int64_t days_late = 0;

    /// True of lines not counted yet and of counted ones alike.
    bool isOverdue() const { return wanted > 0 && days_late > 0; }
};

LineStanding standingOf(const PartLine &line, Moment asOf);

/// What came, or is to come, together.
struct Shipment {
    /// Empty for the lines that name none.
    std::string name;
    /// By id.
    std::vector<Id<PartLine>> lines;
    std::int64_t to_count = 0;
    std::int64_t missing = 0;
    std::int64_t damaged = 0;
    /// Lines with good ones still wanted that are overdue, whatever else they count as.
    std::int64_t late = 0;

    bool isSettled() const { return to_count + missing + damaged == 0; }

    friend bool operator==(const Shipment &, const Shipment &) = default;
};

/// The shipments of the live lines: those with something left to come or to claim first, then in
/// the order in which they were entered.
std::vector<Shipment> shipments(const Records &records, Moment asOf);

/// A line whose good parts are not all here, and what waits for them.
struct Wait {
    Id<PartLine> line;
    LineStanding standing;
    /// The line's own step, else the steps of its part that are neither done nor dropped.
    std::vector<Id<Step>> steps;
};

/// The lines with good ones still wanted; the longest overdue first, then by id.
std::vector<Wait> waits(const Records &records, Moment asOf);

} // namespace lastrivet::stores
