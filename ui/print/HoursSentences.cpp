// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/HoursSentences.h"

#include "ui/print/HoursTables.h"

#include <algorithm>

namespace lastrivet::print {

namespace {

/// What carries most of the spread is named, up to three parts.
constexpr std::size_t mostNamed = 3;
constexpr double leastNamed = 0.1;

std::string hoursOf(const Wording &words, std::int64_t minutes)
{
    return wholeHours(words, minutes).toStdString();
}

std::string count(const Wording &words, std::int64_t number)
{
    return words.number(number).toStdString();
}

QString spreadSentence(const Wording &words, const Records &records, const forecast::Forecast &told)
{
    auto assemblies = told.assemblies;
    std::stable_sort(assemblies.begin(), assemblies.end(), [](const auto &a, const auto &b) {
        return a.share_of_spread > b.share_of_spread;
    });
    QStringList named;
    for (std::size_t i = 0; i < std::min(assemblies.size(), mostNamed); ++i) {
        const Component *part = records.find(assemblies[i].assembly);
        if (part && assemblies[i].share_of_spread >= leastNamed)
            named << QStringLiteral("%1 (%2 %)")
                         .arg(asIs(part->name),
                              QString::number(int(100 * assemblies[i].share_of_spread + 0.5)));
    }
    if (named.isEmpty())
        return {};
    return words.text("Most of the spread comes from: {0}.",
                      {named.join(QStringLiteral(", ")).toStdString()});
}

QString leftOutSentence(const Wording &words, const Records &records,
                        const forecast::Forecast &told)
{
    if (told.without.empty())
        return {};
    QStringList names;
    for (const auto id : told.without) {
        if (const Component *part = records.find(id))
            names << asIs(part->name);
    }
    return words.text("Left out by choice: {0} (steps: {1}, squawks: {2}).",
                      {names.join(QStringLiteral(", ")).toStdString(),
                       count(words, told.work_left.excluded_steps),
                       count(words, told.work_left.excluded_squawks)});
}

QString finishSentence(const Wording &words, const forecast::Forecast &told)
{
    if (told.finish)
        return words.text(
            "Done between {0} and {1}; in 80 futures of 100 by {2}.",
            {told.finish->p10.text(), told.finish->p90.text(), told.finish->p80.text()});
    if (told.needs_hours_per_week && told.idle_weeks > 0)
        return words.text("Nothing was logged in the last {0} weeks; to tell when, it needs the "
                          "hours a week that you mean to work.",
                          {count(words, told.idle_weeks)});
    return told.needs_hours_per_week
               ? words.text("The log is too short to tell when: it needs eight weeks, or the "
                            "hours a week that you mean to work.")
               : words.text("At this pace it is not done within a hundred years.");
}

QString guessSentence(const Wording &words, const forecast::WorkLeft &left)
{
    const auto guessed = count(words, left.guessed_estimates);
    switch (left.stand_in) {
    case forecast::StandIn::FinishedSteps:
        return words.text("Steps without an estimate: {0}. What finished steps of the same kind "
                          "of part took stands in for it.",
                          {guessed});
    case forecast::StandIn::Estimates:
        return words.text("Steps without an estimate: {0}. No finished step tells what they take; "
                          "the median of all estimates stands in for it.",
                          {guessed});
    case forecast::StandIn::TwoHours:
        return words.text("Steps without an estimate: {0}. No finished step and no estimate tells "
                          "what they take; two hours stand in for it.",
                          {guessed});
    }
    return {};
}

} // namespace

QString hoursTitle(const Wording &words)
{
    return words.text("Hours");
}

QString forecastTitle(const Wording &words)
{
    return words.text("Hours to go");
}

QString lookBackTitle(const Wording &words)
{
    return words.text("What the forecast said, and what came");
}

QString hoursSentence(const Wording &words, const hours::Totals &totals)
{
    if (totals.total.sessions == 0)
        return words.text("The log is empty. Hours entered there are added up here.");
    return words.text("{0} by the clock, {1} of all who worked; {2}.",
                      {words.hours(totals.total.minutes).toStdString(),
                       words.hours(totals.total.worker_minutes).toStdString(),
                       reworkWords(words, totals).toStdString()});
}

QStringList estimateSentences(const Wording &words, const hours::Estimates &estimates)
{
    QStringList said;
    if (!estimates.steps.empty())
        said << words.text(
            "Finished steps with an estimate and time in the log: {0}. Thought to take "
            "{1}, they took {2}: {3} of the estimate.",
            {count(words, std::int64_t(estimates.steps.size())),
             words.hours(estimates.estimate).toStdString(),
             words.hours(estimates.actual).toStdString(),
             shareOf(words, estimates.actual, estimates.estimate).toStdString()});
    if (estimates.without_estimate > 0)
        said << words.text("Finished steps without an estimate, left out: {0}.",
                           {count(words, estimates.without_estimate)});
    if (estimates.without_hours > 0)
        said << words.text("Finished steps without time in the log, left out: {0}.",
                           {count(words, estimates.without_hours)});
    return said;
}

QString rangeSentence(const Wording &words, const forecast::Forecast &told)
{
    if (told.assemblies.empty())
        return words.text("Nothing that is left has an estimate.");
    const std::string low = hoursOf(words, told.minutes_to_go.p10);
    const std::string high = hoursOf(words, told.minutes_to_go.p90);
    if (!told.finish)
        return words.text("{0} to {1} h to go", {low, high});
    return words.text("{0} to {1} h to go, done between {2} and {3}",
                      {low, high, told.finish->p10.text(), told.finish->p90.text()});
}

QStringList forecastSentences(const Wording &words, const Records &records,
                              const forecast::Forecast &told)
{
    const auto &left = told.work_left;
    QStringList said;
    if (told.assemblies.empty()) {
        said << words.text("Nothing that is left has an estimate. Write steps with estimates on "
                           "the page of parts, and this tells how long they may take.");
    } else {
        said << words.text("Left to do (steps: {0}, squawks: {1}): {2} to {3} h of all who work.",
                           {count(words, left.steps), count(words, left.squawks),
                            hoursOf(words, told.minutes_to_go.p10),
                            hoursOf(words, told.minutes_to_go.p90)});
        said << finishSentence(words, told);
    }
    if (left.guessed_estimates > 0)
        said << guessSentence(words, left);
    if (left.squawks_without_estimate > 0)
        said << words.text("Squawks without an estimate, in no figure: {0}.",
                           {count(words, left.squawks_without_estimate)});
    said << spreadSentence(words, records, told) << leftOutSentence(words, records, told);
    said.removeAll(QString());
    return said;
}

QStringList lookBackSentences(const Wording &words, const forecast::LookBack &told)
{
    QStringList said;
    if (told.with_outcome > 0)
        said << words.text(
            "In {0} of {1} months no more came than P50 had said, in {2} no more than P80. A "
            "forecast that holds has half of them within P50 and four fifths within P80; months "
            "share most of their work, so a few years are one story, not many.",
            {count(words, told.within_p50), count(words, told.with_outcome),
             count(words, told.within_p80)});
    said << words.text("What came is the time of the steps and squawks that were left then and "
                       "are done now, and all rework since. Estimates are those of today.");
    if (told.finished_on)
        said << words.text("The last step was done on {0}.", {told.finished_on->text()});
    return said;
}

} // namespace lastrivet::print
