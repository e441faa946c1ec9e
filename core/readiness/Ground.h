// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/ById.h"
#include "core/readiness/ByPlace.h"
#include "core/readiness/PartTree.h"
#include "core/records/Records.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// A log entry with the moments that every closing around it asks for. Its step is looked up only
/// when needed, which is seldom.
struct Logged {
    const WorkSession *record = nullptr;
    std::optional<Moment> began;
    std::optional<Moment> ended;
};

/// A picture of the inside where it is filed.
struct Picture {
    const Media *media = nullptr;
    std::optional<Moment> when;
    /// True when it is filed in other places, too.
    bool isSeveral = false;
};

/// What belongs to a closing, looked up once: its reach, the closings inside it, its hold points.
struct ClosingGround {
    const Closing *closing = nullptr;
    bool isAircraft = false;
    std::vector<Stretch> reach;
    /// The proper ancestors of the parts that it encloses.
    std::vector<Place> above;
    /// The other permanent region closings whose part lies in the reach, by position in `closings`.
    std::vector<std::size_t> inner;
    std::vector<const HoldPoint *> hold_points;
    std::vector<const Check *> checks;
    std::vector<const Step *> closing_steps;
    /// Pictures that are linked to the closing itself.
    std::vector<Picture> pictures;
    bool hasDocument = false;
};

/// The index for judging: all live records, grouped by part and by closing.
///
/// Refers to the records, which must outlive it.
class Ground {
public:
    explicit Ground(const Records &records);

    const Records &records;
    PartTree tree;
    /// By rising id.
    std::vector<ClosingGround> closings;

    ByPlace<const Step *> steps;
    ByPlace<Logged> sessions;
    ByPlace<const Squawk *> squawks;
    /// Squawks under each part that fixing them needs access to.
    ByPlace<const Squawk *> access;
    ByPlace<const Deviation *> deviations;
    ByPlace<const Bulletin *> bulletins;
    ByPlace<OfStep<Fastener>> fasteners;
    ByPlace<OfStep<Measurement>> measurements;
    ByPlace<OfStep<PartLine>> part_lines;
    ByPlace<OfStep<MaterialUse>> material_uses;
    /// Pictures of the inside, by the parts that they or what they are linked to are about.
    ByPlace<Picture> pictures;

    /// Records that name no part: only closings with the scope `aircraft` reach them.
    std::vector<const Squawk *> squawks_without_place;
    std::vector<const Deviation *> deviations_without_place;
    std::vector<const Bulletin *> bulletins_without_place;
    std::vector<Picture> pictures_without_place;

    /// The position of a live closing in `closings`.
    std::optional<std::size_t> closingIndex(Id<Closing> id) const;
    /// Live sign-offs of a hold point, by id.
    std::span<const SignOff *const> signOffs(Id<HoldPoint> id) const;
    /// Live sessions on a step that closes something.
    std::span<const WorkSession *const> closingWork(Id<Step> id) const;
    /// Live measurements of the same thing: one part, one `what`.
    const std::vector<OfStep<Measurement>> &repeats(const Measurement &measurement) const;
    /// True when a live squawk came from the inspection.
    bool hasFindings(Id<Inspection> id) const;

private:
    using Repeated = std::pair<std::int64_t, std::string_view>;

    void fileClosings();
    void fileSteps();
    void fileSquawks();
    void filePapers();
    void fileSessions();
    void fileWork();
    void filePictures();
    void fileHoldPoints();
    void findInner();

    ById<HoldPoint, SignOff> m_signOffs;
    ById<Step, WorkSession> m_closingWork;
    std::map<Repeated, std::vector<OfStep<Measurement>>> m_repeats;
    std::unordered_map<std::int64_t, bool> m_hasFindings;
};

/// When a session, which has `began`, ended: its minutes later when it has a time and minutes, else
/// the same as it began.
Moment endOf(const WorkSession &session);

/// True when the record counts anywhere.
template <class Record> bool isLive(const Record &record)
{
    return !record.withdrawn_on;
}

} // namespace lastrivet::readiness
