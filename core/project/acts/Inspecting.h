// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/project/Edit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet::acts {

/// Who has to verify the correction of a finding, and whether on site.
enum class Verifying { InspectorOnSite, InspectorByPhoto, Adviser, Builder };

/// A finding of an inspector; becomes a squawk that names the visit and the number on the sheet.
struct Finding {
    std::string title;
    Id<Component> component_id;
    Severity severity = Severity::Workmanship;
    /// The line on the inspector's sheet.
    std::string number;
    /// When empty, an adviser's finding is verified by the adviser, any other by the inspector.
    std::optional<Verifying> verifying{};
    /// A note for the squawk, in the writer's language.
    std::string note{};
    /// The day that the sheet gives; when empty, that of the visit.
    std::optional<Moment> found_on{};
};

/// The result at one hold point of a visit.
struct Verdict {
    Id<HoldPoint> hold_point_id;
    SignOffResult result = SignOffResult::Accepted;
    std::string remarks;
};

/// A visit as it went: one sheet may sign several hold points.
struct HeldInspection {
    /// The visit that was asked for; a new one when empty.
    Id<Inspection> id;
    InspectionKind kind = InspectionKind::PreCover;
    Moment held_on;
    Id<Person> inspector_id;
    std::string credential;
    Seen seen = Seen::OnSite;
    std::string report_number;
    Id<Media> sheet_id;
    std::vector<Verdict> verdicts;
    std::vector<Finding> findings;
    /// Who was there besides those whom the visit names already.
    IdSet<Person> present{};
};

/// Asks for a visit; returns it.
Id<Inspection> askForInspection(Edit &edit, Inspection asked);
/// Records a visit with its signatures and findings; returns it.
Id<Inspection> holdInspection(Edit &edit, const HeldInspection &held);
/// Adds hold points to a visit that was asked for.
void extendRequest(Edit &edit, Id<Inspection> id, const IdSet<HoldPoint> &points);
void completeInspection(Edit &edit, Id<Inspection> id, Moment on);
void cancelInspection(Edit &edit, Id<Inspection> id, Moment on);
/// Adds a finding to a visit that was held; returns the squawk.
Id<Squawk> addFinding(Edit &edit, Id<Inspection> id, const Finding &finding);

/// The visits that were asked for and are neither held, completed nor cancelled by `by`.
std::vector<const Inspection *> openRequests(const Records &records, Moment by);
/// The visits that were asked for or held, and are neither complete nor cancelled by `by`: an
/// authority with one request at a time takes no other before they are.
std::vector<const Inspection *> unfinishedVisits(const Records &records, Moment by);
/// The findings of a visit that are neither verified nor accepted by `by`.
std::vector<const Squawk *> openFindings(const Records &records, Id<Inspection> id, Moment by);
/// The kind of visit at which a hold point is seen.
InspectionKind visitFor(HoldPointKind kind);

} // namespace lastrivet::acts
