// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"

#include "core/base/Tongue.h"
#include "core/readiness/Names.h"
#include "core/readiness/OutsideLimits.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <optional>
#include <utility>

namespace lastrivet::readiness {

namespace {

/// What a rule says: `{0}` is the record's name.
struct Wording {
    Rule rule;
    std::string_view sentence;
    std::string_view cleared;
};

constexpr std::size_t ruleCount = Words<Rule>::list.size();

/// In the order of `Rule`.
constexpr std::array<Wording, ruleCount> wordings{{
    {Rule::CureTimeUnknown, "{0}: cure time not on record",
     "enter its cure time, from the lot's data sheet"},
    {Rule::CuringMaterial, "{0}: still curing", "wait until the cure time has passed"},
    {Rule::ExpiredMaterial, "{0}: used after its lot expired",
     "replace it, or record who accepts it and on what basis"},
    {Rule::FailedSample, "{0}: the test sample failed",
     "replace it, or record who accepts it and on what basis"},
    {Rule::FastenerNotFitted, "{0}: not fitted", "fit it and record the day"},
    {Rule::FiledAbove, "{0} is filed on a larger part and may lie inside",
     "say where it is, or that it is not inside"},
    {Rule::InnerClosedEarly, "{0} was closed with gaps",
     "have the inspector accept it late, or open it again"},
    {Rule::InnerClosingOpen, "{0}, a box inside, is still open", "close that one first"},
    {Rule::LooseFastener, "{0}: finger-tight, fitted but not torqued",
     "torque it and record the value"},
    {Rule::MeasurementMissing, "{0}: not measured", "measure it and record the value"},
    {Rule::MeasurementOutOfLimits, "{0}: the last measurement is outside its limits",
     "correct it and measure again, or record who accepts it and on what basis"},
    {Rule::MissingPart, "{0}: parts are missing or damaged", "record what has been received"},
    {Rule::OpenBulletin, "{0}: not complied with",
     "comply and record it, or record that it does not apply"},
    {Rule::OpenSquawk, "{0}: open", "correct it and have it verified, or have it accepted"},
    {Rule::OutdatedSignOff, "{0}: work was recorded after the signature",
     "have it signed again, or say of each session whether it changed what was inspected"},
    {Rule::RejectedDeviationBuilt, "{0}: rejected, but built",
     "undo it and record the day, or have it decided anew"},
    {Rule::SignatureWithoutSheet, "{0} is signed, but the signed sheet is not on record",
     "photograph the signed sheet"},
    {Rule::StalePhotos, "The newest photograph is older than the last work inside",
     "photograph it as it is now"},
    {Rule::ThinRecord, "Nothing is on record about the inside: no step, no session, no photograph",
     "record what was done, however roughly"},
    {Rule::TooFewPhotos, "Too few photographs of the inside", "photograph the open structure"},
    {Rule::TorqueOutOfLimits, "{0}: the torque is outside its limits",
     "torque it again, or record who accepts it and on what basis"},
    {Rule::UncalibratedTool, "{0}: the tool was not in calibration",
     "check it with a calibrated tool"},
    {Rule::UndecidedDeviation, "{0}: not decided", "record the decision and its basis"},
    {Rule::UndoneStep, "{0}: not done", "do it, or drop it"},
    {Rule::UnlockedFastener, "{0}: not locked", "lock it and record the day"},
    {Rule::UnmarkedFastener, "{0}: torqued but not sealed with torque paint",
     "mark it and record the day"},
    {Rule::UnsignedHoldPoint, "{0} is not signed", "have it signed"},
    {Rule::UntickedCheck, "{0}: not ticked", "look, and tick it or say that it does not apply"},
}};

/// Every rule needs a line of its own, in the same order.
constexpr bool isInOrder()
{
    for (std::size_t i = 0; i < wordings.size(); ++i) {
        if (wordings[i].rule != Rule(i) || wordings[i].sentence.empty())
            return false;
    }
    return true;
}
static_assert(isInOrder(), "each rule has its line in wordings, in the order of Rule");

Message about(std::string_view pattern, const Blocker &blocker, const Records &records)
{
    const Message name = named(records, blocker.record);
    return {pattern, {pattern.starts_with("{0}") ? nestedFirst(name) : nested(name)}};
}

const HoldPoint *holdPointOf(const Blocker &blocker, const Records &records)
{
    return blocker.record.type == RecordType::HoldPoint
               ? records.find(Id<HoldPoint>{blocker.record.id})
               : nullptr;
}

/// An inspector may accept late under every profile.
std::string_view acceptedLateBy(const Profile &profile)
{
    const bool mayAdviser = profile.late_acceptance_by.contains(SignerRole::Adviser);
    if (profile.late_acceptance_by.contains(SignerRole::Builder))
        return mayAdviser ? "have the builder, the adviser or the inspector accept it late, or "
                            "open it again"
                          : "have the builder or the inspector accept it late, or open it again";
    return mayAdviser ? "have the adviser or the inspector accept it late, or open it again"
                      : wordings[std::size_t(Rule::InnerClosedEarly)].cleared;
}

Message innerClearedBy(const Blocker &blocker, const Records &records, const Profile &profile)
{
    const Closing *inner = records.find(Id<Closing>{blocker.record.id});
    return inner ? gapsClearedBy(*inner, profile) : Message{acceptedLateBy(profile), {}};
}

/// A sentence that says more than the rule's own, and what clears it.
struct Closer {
    Message sentence;
    std::string_view cleared;
};

std::string firstName(const Blocker &blocker, const Records &records)
{
    return nestedFirst(named(records, blocker.record));
}

/// A line that was counted without its day counts as not received, which nobody would guess. Of one
/// that was received later than the day that is judged, the count says nothing of that day.
std::optional<Closer> closerOf(const PartLine &line, bool isReceived, const std::string &name)
{
    const std::int64_t missing = line.quantity - line.received_quantity + line.damaged_quantity;
    if (!line.received_on && missing <= 0)
        return Closer{{"{0}: counted, but the day it came is not on record", {name}},
                      "enter the day it came"};
    if (!isReceived)
        return Closer{{"{0}: not received yet", {name}}, "record what has been received"};
    if (missing <= 0)
        return std::nullopt;
    return Closer{{"{0}: {1} of {2} missing or damaged",
                   {name, std::to_string(missing), std::to_string(line.quantity)}},
                  "record what has been received"};
}

/// With the days, which tell how long past its date it was.
std::optional<Closer> closerOf(const MaterialUse &use, const std::string &name,
                               const Records &records)
{
    for (const Id<MaterialLot> id : use.lot_ids) {
        const MaterialLot *lot = records.findLive(id);
        if (lot && lot->expires_on && use.used_on && after(*use.used_on, *lot->expires_on))
            return Closer{{"{0}: used on {1}, after its lot expired on {2}",
                           {name, use.used_on->text(), lot->expires_on->text()}},
                          wordings[std::size_t(Rule::ExpiredMaterial)].cleared};
    }
    return std::nullopt;
}

/// The fact with its day; log entries and signatures name their own.
Message dated(const Records &records, const Fact &fact)
{
    Message name = named(records, fact.record);
    if (fact.record.type == RecordType::WorkSession || fact.record.type == RecordType::SignOff)
        return name;
    // Of a closing only that it was opened voids anything.
    if (fact.record.type == RecordType::Closing)
        return {"the opening of “{0}” on {1}", {nested(name), fact.moment.text()}};
    return {"{0} on {1}", {nested(name), fact.moment.text()}};
}

/// What came after a signature; only of log entries of which nobody said it yet can it be said that
/// they changed nothing.
std::optional<Closer> closerOf(const std::vector<Fact> &facts, const std::string &name,
                               const Records &records)
{
    if (facts.empty())
        return std::nullopt;
    const auto isUnsaid = [&](const Fact &fact) {
        const WorkSession *session = fact.record.type == RecordType::WorkSession
                                         ? records.find(Id<WorkSession>{fact.record.id})
                                         : nullptr;
        return session && !session->changed_inspected.has_value();
    };
    const bool areUnsaid = std::all_of(facts.begin(), facts.end(), isUnsaid);
    const auto heavy =
        std::find_if(facts.begin(), facts.end(), [](const Fact &fact) { return fact.heavy; });
    const Fact &gravest = heavy == facts.end() ? facts.front() : *heavy;
    const std::string what = nested(dated(records, gravest));
    Message sentence{"{0}: after the signature came {1}", {name, what}};
    if (facts.size() > 1)
        sentence = {"{0}: after the signature came {1}, and {2} more",
                    {name, what, std::to_string(facts.size() - 1)}};
    return Closer{std::move(sentence), areUnsaid
                                           ? wordings[std::size_t(Rule::OutdatedSignOff)].cleared
                                           : std::string_view("have it signed again")};
}

/// With the numbers: what is to be done depends on how far outside it is.
std::optional<Closer> outsideLimits(const Blocker &blocker, const Records &records)
{
    std::optional<Message> sentence;
    if (blocker.record.type == RecordType::Fastener) {
        if (const Fastener *fastener = records.find(Id<Fastener>{blocker.record.id}))
            sentence = torqueOutside(*fastener, firstName(blocker, records));
    } else if (const Measurement *taken = records.find(Id<Measurement>{blocker.record.id})) {
        sentence = measurementOutside(*taken, firstName(blocker, records));
    }
    if (!sentence)
        return std::nullopt;
    return Closer{*std::move(sentence), wordings[std::size_t(blocker.rule)].cleared};
}

std::optional<Closer> closer(const Blocker &blocker, const Records &records)
{
    if (blocker.rule == Rule::TorqueOutOfLimits || blocker.rule == Rule::MeasurementOutOfLimits)
        return outsideLimits(blocker, records);
    if (blocker.rule == Rule::OutdatedSignOff)
        return closerOf(blocker.facts, firstName(blocker, records), records);
    if (blocker.rule == Rule::MissingPart) {
        const PartLine *line = records.find(Id<PartLine>{blocker.record.id});
        return line ? closerOf(*line, blocker.is_received, firstName(blocker, records))
                    : std::nullopt;
    }
    if (blocker.rule == Rule::ExpiredMaterial) {
        const MaterialUse *use = records.find(Id<MaterialUse>{blocker.record.id});
        return use ? closerOf(*use, firstName(blocker, records), records) : std::nullopt;
    }
    if (blocker.rule != Rule::UnsignedHoldPoint)
        return std::nullopt;
    if (blocker.is_signed_later)
        return Closer{
            {"{0} was not signed before the closing, only after it", {firstName(blocker, records)}},
            wordings[std::size_t(Rule::InnerClosedEarly)].cleared};
    if (!blocker.waits_for)
        return Closer{
            {"{0} was rejected, and its findings are not entered", {firstName(blocker, records)}},
            "enter the findings of the rejection as squawks of that inspection"};
    if (blocker.is_rejected)
        return Closer{{"{0} was rejected, and is not signed since", {firstName(blocker, records)}},
                      "correct what was found, and have it signed again"};
    return std::nullopt;
}

bool isFixed(const Blocker &blocker, const Records &records)
{
    const Squawk *squawk =
        blocker.rule == Rule::OpenSquawk ? records.find(Id<Squawk>{blocker.record.id}) : nullptr;
    return squawk && blocker.waits_for;
}

/// What the profile cites for one of its single values; empty when it cites nothing.
std::string citationOf(SingleRule rule, const Profile &profile)
{
    const auto basis = std::find_if(profile.basis.begin(), profile.basis.end(),
                                    [&](const auto &candidate) { return candidate.rule == rule; });
    return basis == profile.basis.end() ? std::string{}
                                        : profile.citation(basis->source, basis->mark);
}

/// What a record says of its source: the id of one that the profile lists, or words of its own.
std::string asCited(const std::string &written, const Profile &profile)
{
    const Profile::Source *listed = profile.findSource(written);
    return listed ? profile.citation(listed->id, listed->mark) : written;
}

std::string sourceOf(const HoldPoint &point, const Profile &profile)
{
    if (!point.source.empty())
        return asCited(point.source, profile);
    const auto rule = std::find_if(
        profile.hold_points.begin(), profile.hold_points.end(), [&](const auto &candidate) {
            return candidate.kind == point.kind && candidate.signer_role == point.signer_role;
        });
    return rule == profile.hold_points.end() ? std::string{}
                                             : profile.citation(rule->source, rule->mark);
}

/// Only a claim of the factory is early by a single value of the profile.
std::string innerSource(const Blocker &blocker, const Records &records, const Profile &profile)
{
    const Closing *inner = records.find(Id<Closing>{blocker.record.id});
    return inner && inner->made_by == MadeBy::Factory
               ? citationOf(SingleRule::FactoryClosingNeedsDocument, profile)
               : std::string{};
}

} // namespace

Message sentence(const Blocker &blocker, const Records &records)
{
    if (isFixed(blocker, records))
        return about("{0}: fixed, not verified", blocker, records);
    if (auto more = closer(blocker, records))
        return std::move(more->sentence);
    return about(wordings[std::size_t(blocker.rule)].sentence, blocker, records);
}

Message clearedBy(const Blocker &blocker, const Records &records, const Profile &profile)
{
    if (blocker.rule == Rule::InnerClosedEarly)
        return innerClearedBy(blocker, records, profile);
    if (blocker.is_signed_later)
        return {acceptedLateBy(profile), {}};
    if (isFixed(blocker, records))
        return {"have it verified", {}};
    if (const auto more = closer(blocker, records))
        return {more->cleared, {}};
    return {wordings[std::size_t(blocker.rule)].cleared, {}};
}

std::string source(const Blocker &blocker, const Records &records, const Profile &profile)
{
    if (blocker.rule == Rule::TooFewPhotos)
        return citationOf(SingleRule::InteriorPhotos, profile);
    if (blocker.rule == Rule::InnerClosedEarly)
        return innerSource(blocker, records, profile);
    if (blocker.rule == Rule::UntickedCheck) {
        const Check *check = records.find(Id<Check>{blocker.record.id});
        return check ? asCited(check->source, profile) : std::string{};
    }
    const HoldPoint *point = holdPointOf(blocker, records);
    return point ? sourceOf(*point, profile) : std::string{};
}

Message gapsClearedBy(const Closing &closing, const Profile &profile)
{
    if (closing.made_by == MadeBy::Factory)
        return {"take in the maker's document and link it", {}};
    return {acceptedLateBy(profile), {}};
}

Message closedBeforeRecords()
{
    return {"closed before these records began; the inspector decides", {}};
}

Message sentence(const ToComplete &missing, const Records &records)
{
    const std::string name = nested(named(records, missing.record));
    switch (missing.what) {
    case Gap::ClosingStepNotDone:
        return {"{0}: its closing is closed, the step is not done", {name}};
    case Gap::FactoryClosingWithoutDocument:
        return {"{0}: closed by the factory, no document on record", {name}};
    case Gap::PartWithoutClosing:
        return {"{0}: no closing is recorded for it", {name}};
    case Gap::RecordWithoutPlace:
        return {"{0} names no part", {name}};
    }
    return {};
}

Message stateInWords(State state)
{
    switch (state) {
    case State::Closed:
        return {"closed", {}};
    case State::ClosedEarly:
        return {"closed with gaps", {}};
    case State::Clear:
        return {"nothing on record against closing", {}};
    case State::ReadyToSign:
        return {"stays open, waits for your signature", {}};
    case State::ReadyToInspect:
        return {"stays open, waits for the inspector", {}};
    case State::Hold:
        return {"stays open, work left", {}};
    }
    return {};
}

} // namespace lastrivet::readiness
