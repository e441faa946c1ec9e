// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/packet/Aircraft.h"
#include "core/packet/Region.h"
#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// What the inspector reads first: which aircraft, what is to be closed, what is asked of him, and
/// what the records do not say.
struct FrontPages {
    struct ToClose {
        Id<Closing> id;
        std::string title;
        std::string part;
        readiness::State state = readiness::State::Hold;
        bool begun = true;
        std::int64_t musts = 0;
        std::int64_t shoulds = 0;
    };
    /// What is asked of somebody, and about what.
    struct Request {
        SignerRole of = SignerRole::Inspector;
        Message what;
        /// The titles of the closings that it is asked for.
        std::vector<std::string> about;
        /// What it is about; empty where that is a closing with gaps.
        std::optional<RecordRef> record;
        /// As of what is open, and what to decide of a closing with gaps.
        bool is_grave = false;
    };
    /// Something that keeps a closing open.
    struct Open {
        Id<Closing> of;
        std::string closing;
        Message what;
        std::optional<SignerRole> waits_for;
        /// What it is about.
        RecordType kind = RecordType::Step;
        /// An airworthiness squawk, a deviation rejected and built, or a mandatory bulletin.
        bool is_grave = false;
    };
    /// Something that is open behind a closing of the packet that is closed.
    struct OutOfReach {
        /// Titles, one or several.
        std::string closings;
        Message what;
        bool is_grave = false;
    };
    struct Waived {
        std::string closing;
        HoldPointKind kind = HoldPointKind::OwnCheck;
        SignerRole signer_role = SignerRole::Builder;
        std::optional<Moment> on;
        std::string by;
        std::string why;
    };
    struct ClosedWithGaps {
        std::string title;
        std::optional<Moment> closed_on;
        bool approximate = false;
        std::string by;
        std::string reason;
        std::vector<Message> missing;
        /// False for a closing elsewhere in the aircraft, named until somebody accepts it.
        bool in_region = true;
    };
    struct NotOnRecord {
        std::string closing;
        std::vector<Message> kinds;
    };

    /// What the records lack of one kind, by closing.
    struct Lacking {
        Message kind;
        /// Titles; those in whose reach no work was begun come last.
        std::vector<std::string> closings;
    };

    /// A visit asked for or held for these closings; or one that is still open elsewhere, where the
    /// authority takes one request at a time.
    struct Visit {
        InspectionKind kind = InspectionKind::PreCover;
        std::string reference;
        std::optional<Moment> asked_on;
        std::optional<Moment> planned_for;
        std::optional<Moment> held_on;
        std::optional<Moment> completed_on;
        std::string inspector;
        /// Inspector, or adviser.
        SignerRole visitor_role = SignerRole::Inspector;
        std::string report_number;
        bool is_for_these = true;
    };

    packet::Aircraft aircraft;
    std::vector<ToClose> to_close;
    std::vector<Visit> visits;
    /// Each once, in however many closings: grave ones first, what is to be decided last.
    std::vector<Request> asked;
    /// By closing, of each the grave ones first.
    std::vector<Open> open;
    /// Grave ones first.
    std::vector<OutOfReach> out_of_reach;
    std::vector<Waived> waived;
    std::vector<ClosedWithGaps> closed_with_gaps;
    std::vector<NotOnRecord> not_on_record;
    /// The same by kind, in the order of the pages behind.
    std::vector<Lacking> lacking;
};

/// A visit as it stood at `asOf`, as one for these closings.
FrontPages::Visit visitOf(const Records &records, const Inspection &inspection, Moment asOf);

FrontPages frontPages(const Region &region, const Profile &profile,
                      const readiness::Answer &answer);

} // namespace lastrivet::packet
