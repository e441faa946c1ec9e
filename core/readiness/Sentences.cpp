// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Sentences.h"

#include "core/base/Tongue.h"
#include "core/readiness/Names.h"

#include <algorithm>

namespace lastrivet::readiness {

namespace {

/// What a rule says: `{0}` is the record's name.
struct Wording {
    std::string_view sentence;
    std::string_view cleared;
};

/// In the order of `Rule`.
constexpr Wording wordings[] = {
    {"{0}: cure time not on record", "enter its cure time, from the lot's data sheet"},
    {"{0}: still curing", "wait until the cure time has passed"},
    {"{0}: used after its lot expired", "replace it, or record who accepts it and on what basis"},
    {"{0}: the test sample failed", "replace it, or record who accepts it and on what basis"},
    {"{0}: not fitted", "fit it and record the day"},
    {"{0} is filed on a larger part and may lie inside",
     "say where it is, or that it is not inside"},
    {"{0} was closed with gaps", "have the inspector accept it late, or open it again"},
    {"{0}, a box inside, is still open", "close that one first"},
    {"{0}: finger-tight, fitted but not torqued", "torque it and record the value"},
    {"{0}: not measured", "measure it and record the value"},
    {"{0}: the last measurement is outside its limits",
     "correct it and measure again, or record who accepts it and on what basis"},
    {"{0}: parts are missing or damaged", "record what has been received"},
    {"{0}: not complied with", "comply and record it, or record that it does not apply"},
    {"{0}: open", "correct it and have it verified, or have it accepted"},
    {"{0}: work was recorded after the signature",
     "have it signed again, or say of each session whether it changed what was inspected"},
    {"{0}: rejected, but built", "undo it and record the day, or have it decided anew"},
    {"{0} is signed, but the signed sheet is not on record", "photograph the signed sheet"},
    {"The newest photograph is older than the last work inside", "photograph it as it is now"},
    {"Nothing is on record about the inside: no step, no session, no photograph",
     "record what was done, however roughly"},
    {"Too few photographs of the inside", "photograph the open structure"},
    {"{0}: the torque is outside its limits",
     "torque it again, or record who accepts it and on what basis"},
    {"{0}: the tool was not in calibration", "check it with a calibrated tool"},
    {"{0}: not decided", "record the decision and its basis"},
    {"{0}: not done", "do it, or drop it"},
    {"{0}: not locked", "lock it and record the day"},
    {"{0}: torqued but not sealed with torque paint", "mark it and record the day"},
    {"{0} is not signed", "have it signed"},
    {"{0}: not ticked", "look, and tick it or say that it does not apply"},
};

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

bool isFixed(const Blocker &blocker, const Records &records)
{
    const Squawk *squawk =
        blocker.rule == Rule::OpenSquawk ? records.find(Id<Squawk>{blocker.record.id}) : nullptr;
    return squawk && blocker.waits_for;
}

} // namespace

Message sentence(const Blocker &blocker, const Records &records)
{
    if (isFixed(blocker, records))
        return about("{0}: fixed, not verified", blocker, records);
    const bool isRejected = blocker.rule == Rule::UnsignedHoldPoint && !blocker.waits_for;
    if (isRejected)
        return about("{0} was rejected, and its findings are not entered", blocker, records);
    return about(wordings[std::size_t(blocker.rule)].sentence, blocker, records);
}

Message clearedBy(const Blocker &blocker, const Records &records)
{
    if (isFixed(blocker, records))
        return {"have it verified", {}};
    if (blocker.rule == Rule::UnsignedHoldPoint && !blocker.waits_for)
        return {"enter the findings of the rejection as squawks of that inspection", {}};
    return {wordings[std::size_t(blocker.rule)].cleared, {}};
}

std::string source(const Blocker &blocker, const Records &records, const Profile &profile)
{
    const HoldPoint *point = holdPointOf(blocker, records);
    if (!point)
        return {};
    if (const Profile::Source *listed = profile.findSource(point->source))
        return profile.citation(listed->id, listed->mark);
    if (!point->source.empty())
        return point->source;
    const auto rule = std::find_if(
        profile.hold_points.begin(), profile.hold_points.end(), [&](const auto &candidate) {
            return candidate.kind == point->kind && candidate.signer_role == point->signer_role;
        });
    return rule == profile.hold_points.end() ? std::string{}
                                             : profile.citation(rule->source, rule->mark);
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
