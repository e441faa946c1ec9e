// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Id.h"
#include "core/base/Minutes.h"
#include "core/base/Moment.h"
#include "core/records/Closing.h"
#include "core/records/Component.h"
#include "core/records/RecordType.h"
#include "core/records/Step.h"
#include "core/records/Vocabulary.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::readiness {

/// What can stand in the way of a closing, in alphabetical order of the names.
enum class Rule {
    CureTimeUnknown,
    CuringMaterial,
    ExpiredMaterial,
    FailedSample,
    FastenerNotFitted,
    FiledAbove,
    InnerClosedEarly,
    InnerClosingOpen,
    LooseFastener,
    MeasurementMissing,
    MeasurementOutOfLimits,
    MissingPart,
    OpenBulletin,
    OpenSquawk,
    OutdatedSignOff,
    RejectedDeviationBuilt,
    SignatureWithoutSheet,
    StalePhotos,
    ThinRecord,
    TooFewPhotos,
    TorqueOutOfLimits,
    UncalibratedTool,
    UndecidedDeviation,
    UndoneStep,
    UnlockedFastener,
    UnmarkedFastener,
    UnsignedHoldPoint,
    UntickedCheck,
};

/// `Must` keeps a closing open; `Should` is advice.
enum class Weight { Must, Should };

/// Where a closing stands. `Hold`, `ReadyToInspect` and `ReadyToSign` all mean: must stay open.
enum class State {
    Closed,
    ClosedEarly,    ///< closed although something stood in the way
    Clear,          ///< nothing on record stands in the way
    ReadyToSign,    ///< only the builder's own signatures are missing
    ReadyToInspect, ///< only signatures are missing, somebody else's among them
    Hold,           ///< there is work left
};

constexpr bool isClosed(State state)
{
    return state == State::Closed || state == State::ClosedEarly;
}

/// Neither closed nor clear.
constexpr bool mustStayOpen(State state)
{
    return state == State::Hold || state == State::ReadyToInspect || state == State::ReadyToSign;
}

/// Something that happened after a signature and touches what was signed for.
struct Fact {
    RecordRef record;
    Moment moment;
    /// False for a work session of which nobody said whether it changed what was inspected; and,
    /// after a tool and debris check, for signatures and closing work of a later day.
    bool heavy;

    friend bool operator==(const Fact &, const Fact &) = default;
};

/// One thing that stands in the way of a closing, or advice about it.
struct Blocker {
    Rule rule;
    Weight weight;
    RecordRef record;
    /// Set when nothing but a signature is missing: who has to give it.
    std::optional<SignerRole> waits_for;
    /// Of an outdated signature: what happened since.
    std::vector<Fact> facts;
    /// True for an unsigned hold point whose latest signature is a rejection.
    bool is_rejected = false;
    /// True for a packing line that was received, but short of parts.
    bool is_received = false;
    /// Of a hold point that was not signed when its region was closed: it was accepted since.
    bool is_signed_later = false;

    friend bool operator==(const Blocker &, const Blocker &) = default;
};

/// How much is on record within the reach of a closing.
struct OnRecord {
    std::int64_t steps = 0;
    std::int64_t sessions = 0;
    std::int64_t photos = 0;
    std::int64_t squawks = 0;
    std::int64_t deviations = 0;
    std::int64_t bulletins = 0;
    std::int64_t fasteners = 0;
    std::int64_t measurements = 0;
    std::int64_t part_lines = 0;
    std::int64_t material_uses = 0;
    std::int64_t checks = 0;
    std::int64_t checks_done = 0;

    friend bool operator==(const OnRecord &, const OnRecord &) = default;
};

/// The answer for one closing. Blockers and counts of a closed one are those at the moment when it
/// was closed.
struct ClosingAnswer {
    Id<Closing> id;
    State state = State::Hold;
    /// True when work within its reach has begun (see `isBegun`), and when it is closed.
    bool begun = false;
    IdSet<Component> reach;
    OnRecord on_record;
    std::vector<Blocker> blockers;

    friend bool operator==(const ClosingAnswer &, const ClosingAnswer &) = default;
};

/// A record with the closings it concerns.
struct RecordAndClosings {
    RecordRef record;
    IdSet<Closing> closings;

    friend bool operator==(const RecordAndClosings &, const RecordAndClosings &) = default;
};

/// What a closing that may be next would bury.
struct LastChance {
    Id<Closing> closing;
    std::vector<RecordRef> items;

    friend bool operator==(const LastChance &, const LastChance &) = default;
};

/// One more closing that a visit could cover.
struct VisitPlanRow {
    Id<Closing> closing;
    /// Estimated work for this closing and for those of the rows before.
    Minutes cumulative_minutes;
    /// Steps and squawks without an estimate that this row adds; they count as 0 minutes.
    std::int64_t unknown_estimates = 0;
    /// What keeps it open besides steps, squawks, inner closings and signatures.
    std::int64_t other_blockers = 0;

    friend bool operator==(const VisitPlanRow &, const VisitPlanRow &) = default;
};

/// What can be missing from the records.
enum class Gap {
    ClosingStepNotDone,
    FactoryClosingWithoutDocument,
    PartWithoutClosing,
    RecordWithoutPlace,
};

/// Something that is missing from the records.
struct ToComplete {
    Gap what;
    RecordRef record;

    friend bool operator==(const ToComplete &, const ToComplete &) = default;
};

/// The worst state of the closings at or below a part.
struct Badge {
    Id<Component> id;
    State state;

    friend bool operator==(const Badge &, const Badge &) = default;
};

/// The whole readiness answer at one moment; `Lists.h` says what each list holds.
struct Answer {
    Moment as_of;
    /// The id of the rule profile.
    std::string profile;
    /// All live closings, by id.
    std::vector<ClosingAnswer> closings;
    std::vector<RecordAndClosings> out_of_reach;
    std::vector<LastChance> last_chance;
    std::vector<Id<Step>> workable;
    std::vector<VisitPlanRow> visit_plan;
    std::vector<RecordAndClosings> unlock;
    std::vector<ToComplete> to_complete;
    /// Parts with a badge, by id; the others have no closing at or below them.
    std::vector<Badge> components;

    /// The answer for a closing, or null.
    const ClosingAnswer *closing(Id<Closing> id) const;
    /// The badge of a part.
    std::optional<State> badge(Id<Component> id) const;

    friend bool operator==(const Answer &, const Answer &) = default;
};

} // namespace lastrivet::readiness

namespace lastrivet {

template <> struct Words<readiness::Rule> {
    static constexpr std::array<std::string_view, 28> list{"cure-time-unknown",
                                                           "curing-material",
                                                           "expired-material",
                                                           "failed-sample",
                                                           "fastener-not-fitted",
                                                           "filed-above",
                                                           "inner-closed-early",
                                                           "inner-closing-open",
                                                           "loose-fastener",
                                                           "measurement-missing",
                                                           "measurement-out-of-limits",
                                                           "missing-part",
                                                           "open-bulletin",
                                                           "open-squawk",
                                                           "outdated-sign-off",
                                                           "rejected-deviation-built",
                                                           "signature-without-sheet",
                                                           "stale-photos",
                                                           "thin-record",
                                                           "too-few-photos",
                                                           "torque-out-of-limits",
                                                           "uncalibrated-tool",
                                                           "undecided-deviation",
                                                           "undone-step",
                                                           "unlocked-fastener",
                                                           "unmarked-fastener",
                                                           "unsigned-hold-point",
                                                           "unticked-check"};
};

template <> struct Words<readiness::Weight> {
    static constexpr std::array<std::string_view, 2> list{"must", "should"};
};

template <> struct Words<readiness::State> {
    static constexpr std::array<std::string_view, 6> list{
        "closed", "closed_early", "clear", "ready_to_sign", "ready_to_inspect", "hold"};
};

template <> struct Words<readiness::Gap> {
    static constexpr std::array<std::string_view, 4> list{
        "closing-step-not-done", "factory-closing-without-document", "part-without-closing",
        "record-without-place"};
};

} // namespace lastrivet
