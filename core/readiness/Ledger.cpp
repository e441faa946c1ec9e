// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/readiness/Ledger.h"

#include "core/readiness/Census.h"

#include <algorithm>
#include <array>
#include <iterator>

namespace lastrivet::readiness {

namespace {

/// A rule as an inspector would ask for it, and what it looks at.
struct Question {
    Rule rule;
    std::string_view demand;
    std::string_view one;
    std::string_view many;
    std::int64_t (*count)(const Census &census);
};

constexpr std::size_t ruleCount = Words<Rule>::list.size();

constexpr std::array<Question, ruleCount> inspectorsOrder{{
    {Rule::UnsignedHoldPoint, "every hold point is signed", "{0} hold point", "{0} hold points",
     [](const Census &c) { return c.holdPoints(); }},
    {Rule::OutdatedSignOff, "nothing was changed after a signature", "{0} signed", "{0} signed",
     [](const Census &c) { return c.signedHoldPoints(); }},
    {Rule::SignatureWithoutSheet, "the signed sheets are filed", "{0} signed", "{0} signed",
     [](const Census &c) { return c.signedByOthers(); }},
    {Rule::InnerClosingOpen, "every box within is closed", "{0} box within", "{0} boxes within",
     [](const Census &c) { return c.innerClosings(); }},
    {Rule::InnerClosedEarly, "no box within was closed with gaps", "{0} box within",
     "{0} boxes within", [](const Census &c) { return c.innerClosings(); }},
    {Rule::UndoneStep, "every step is done or dropped", "{0} step", "{0} steps",
     [](const Census &c) { return c.onRecord().steps; }},
    {Rule::OpenSquawk, "every squawk is verified or accepted", "{0} squawk", "{0} squawks",
     [](const Census &c) { return c.squawks(); }},
    {Rule::UndecidedDeviation, "every deviation is decided", "{0} deviation", "{0} deviations",
     [](const Census &c) { return c.onRecord().deviations; }},
    {Rule::RejectedDeviationBuilt, "no rejected deviation is left as built", "{0} built",
     "{0} built", [](const Census &c) { return c.builtDeviations(); }},
    {Rule::OpenBulletin, "every bulletin that applies is complied with", "{0} bulletin",
     "{0} bulletins", [](const Census &c) { return c.onRecord().bulletins; }},
    {Rule::FiledAbove, "nothing open is filed on a larger assembly", "{0} filed above",
     "{0} filed above", [](const Census &c) { return c.filedAbove(); }},
    {Rule::FastenerNotFitted, "every fastener is fitted", "{0} line", "{0} lines",
     [](const Census &c) { return c.onRecord().fasteners; }},
    {Rule::LooseFastener, "every fastener with a torque limit is torqued", "{0} with a limit",
     "{0} with limits", [](const Census &c) { return c.torqueLimits(); }},
    {Rule::TorqueOutOfLimits, "every torque is within its limits", "{0} torqued", "{0} torqued",
     [](const Census &c) { return c.torquedWithLimits(); }},
    {Rule::UnlockedFastener, "every lock made by hand is in place", "{0} lock", "{0} locks",
     [](const Census &c) { return c.handLocks(); }},
    {Rule::UnmarkedFastener, "every torqued fastener carries its mark", "{0} torqued",
     "{0} torqued", [](const Census &c) { return c.torqued(); }},
    {Rule::MeasurementMissing, "every measurement is taken", "{0} measurement", "{0} measurements",
     [](const Census &c) { return c.onRecord().measurements; }},
    {Rule::MeasurementOutOfLimits, "every measurement is within its limits", "{0} measured",
     "{0} measured", [](const Census &c) { return c.measuredWithLimits(); }},
    {Rule::UncalibratedTool, "tools were in calibration when used", "{0} use", "{0} uses",
     [](const Census &c) { return c.toolUses(); }},
    {Rule::MissingPart, "every part has arrived undamaged", "{0} packing line", "{0} packing lines",
     [](const Census &c) { return c.onRecord().part_lines; }},
    {Rule::ExpiredMaterial, "no material was used past its date", "{0} dated batch",
     "{0} dated batches", [](const Census &c) { return c.usesWithExpiry(); }},
    {Rule::CuringMaterial, "everything that cures has cured", "{0} batch", "{0} batches",
     [](const Census &c) { return c.knownCureTimes(); }},
    {Rule::CureTimeUnknown, "cure times are known", "{0} batch", "{0} batches",
     [](const Census &c) { return c.usesThatCure(); }},
    {Rule::FailedSample, "no test sample failed", "{0} tested", "{0} tested",
     [](const Census &c) { return c.testedSamples(); }},
    {Rule::TooFewPhotos, "the open structure is photographed", "{0} photograph", "{0} photographs",
     [](const Census &c) { return c.onRecord().photos; }},
    {Rule::StalePhotos, "the photographs are as new as the work", "{0} photograph",
     "{0} photographs", [](const Census &c) { return c.onRecord().photos; }},
    {Rule::UntickedCheck, "every line of the inspection list is ticked", "{0} line", "{0} lines",
     [](const Census &c) { return c.onRecord().checks; }},
    {Rule::ThinRecord, "there is work on record", "{0} record", "{0} records",
     [](const Census &c) {
         return c.onRecord().steps + c.onRecord().sessions + c.onRecord().photos;
     }},
}};

/// Every rule needs a line: the list is indexed by rule.
constexpr bool hasEachRuleOnce()
{
    std::array<bool, ruleCount> isThere{};
    for (const Question &question : inspectorsOrder) {
        if (question.demand.empty() || isThere[std::size_t(question.rule)])
            return false;
        isThere[std::size_t(question.rule)] = true;
    }
    return true;
}
static_assert(hasEachRuleOnce(), "each rule has one line in inspectorsOrder");

const Question &questionOf(Rule rule)
{
    return *std::find_if(inspectorsOrder.begin(), inspectorsOrder.end(),
                         [rule](const Question &question) { return question.rule == rule; });
}

Outcome outcomeOf(const LedgerLine &line)
{
    if (line.blockers.empty())
        return line.looked_at > 0 ? Outcome::Met : Outcome::NothingOnRecord;
    const bool hasMust =
        std::any_of(line.blockers.begin(), line.blockers.end(),
                    [](const Blocker &blocker) { return blocker.weight == Weight::Must; });
    return hasMust ? Outcome::NotMet : Outcome::Advice;
}

} // namespace

std::vector<LedgerLine> ledger(const ClosingAnswer &closing, const Records &records, Moment as_of)
{
    const Census census(closing, records, judgedAt(closing, records, as_of));
    std::vector<LedgerLine> lines;
    lines.reserve(inspectorsOrder.size());
    for (const Question &question : inspectorsOrder) {
        LedgerLine line{question.rule, Outcome::Met, question.count(census), {}};
        std::copy_if(closing.blockers.begin(), closing.blockers.end(),
                     std::back_inserter(line.blockers),
                     [&](const Blocker &blocker) { return blocker.rule == question.rule; });
        line.outcome = outcomeOf(line);
        lines.push_back(std::move(line));
    }
    return lines;
}

Message demandOf(Rule rule)
{
    return Message{questionOf(rule).demand, {}};
}

Message countedBy(Rule rule, std::int64_t count)
{
    const Question &question = questionOf(rule);
    return Message{count == 1 ? question.one : question.many, {std::to_string(count)}};
}

Message inWords(Outcome outcome)
{
    constexpr std::array<std::string_view, 4> words{"met", "not met", "advice",
                                                    "nothing on record"};
    return Message{words[std::size_t(outcome)], {}};
}

Moment judgedAt(const ClosingAnswer &closing, const Records &records, Moment as_of)
{
    const Closing *record = records.find(closing.id);
    if (!record || !isClosed(closing.state))
        return as_of;
    std::optional<Moment> moment;
    for (const Closing::Event &event : record->events) {
        if (happened(event.closed_on, as_of))
            moment = event.closed_on;
    }
    return moment.value_or(as_of);
}

} // namespace lastrivet::readiness
