// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/packet/Region.h"
#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/readiness/Ledger.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Where one closing stands: its hold points, its history and every rule.
struct Standing {
    struct Signature {
        std::string by;
        std::string credential;
        std::optional<Moment> signed_on;
        SignOffResult result = SignOffResult::Accepted;
        Seen seen = Seen::OnSite;
        std::string remarks;
        bool has_sheet = false;
    };
    struct HoldPointLine {
        Id<HoldPoint> id;
        HoldPointKind kind = HoldPointKind::OwnCheck;
        SignerRole signer_role = SignerRole::Builder;
        bool required = true;
        std::string source;
        /// The latest one; empty while nobody has signed.
        std::optional<Signature> signature;
        /// Those before it, by day: a rejection does not go from the paper with what came after it.
        std::vector<Signature> before;
        /// True when something was changed after the signature.
        bool is_outdated = false;
        std::optional<Moment> waived_on;
        std::string waived_by;
        std::string waived_why;
    };
    /// Closed or opened; exactly one of the moments is set.
    struct Event {
        std::optional<Moment> closed_on;
        std::optional<Moment> opened_on;
        std::string by;
        std::string reason;
        bool approximate = false;
    };
    /// A record that does not meet a rule.
    struct Finding {
        readiness::Weight weight = readiness::Weight::Must;
        Message what;
        Message cleared_by;
        std::string source;
        std::vector<readiness::Fact> facts;
    };
    struct RuleLine {
        readiness::Rule rule = readiness::Rule::UnsignedHoldPoint;
        readiness::Outcome outcome = readiness::Outcome::Met;
        Message demand;
        Message looked_at;
        std::vector<Finding> findings;
        /// Nothing that the rule looks at is on record.
        bool has_none = false;
    };

    Id<Closing> id;
    std::string title;
    std::string part;
    std::vector<std::string> encloses;
    ClosingScope scope = ClosingScope::Region;
    bool permanent = true;
    MadeBy made_by = MadeBy::Builder;
    std::string method;
    readiness::State state = readiness::State::Hold;
    /// False while no work is on record in its reach and it was never closed.
    bool begun = true;
    std::vector<Event> events;
    std::vector<HoldPointLine> hold_points;
    std::vector<Signature> late_acceptances;
    readiness::OnRecord on_record;
    std::vector<RuleLine> rules;
};

/// The state as somebody else reads it on paper, who is not the builder: "stays open, waits for the
/// builder's signature"; "not begun" while no work is on record and it was never closed.
Message inWords(readiness::State state, bool begun);

Standing standing(const Region &region, const Profile &profile, const Region::Chosen &chosen);
std::vector<Standing> standings(const Region &region, const Profile &profile);
/// The boxes inside the chosen closings that are not chosen themselves, by id: who signed them and
/// when they were closed, without their rules.
std::vector<Standing> standingsWithin(const Region &region, const readiness::Answer &answer);

} // namespace lastrivet::packet
