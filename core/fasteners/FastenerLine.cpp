// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/fasteners/FastenerLine.h"

#include "core/base/CaseFold.h"
#include "core/base/Digits.h"
#include "core/base/Hyphens.h"
#include "core/base/Trimmed.h"
#include "core/base/TypedNumber.h"
#include "core/fasteners/CountedPlace.h"
#include "core/fasteners/SpokenWords.h"
#include "core/fasteners/ThreadText.h"
#include "core/fasteners/TorqueProposal.h"
#include "core/fasteners/TorqueUnits.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

namespace lastrivet::fasteners {

namespace {

/// What a line says, before the table is asked.
struct Spoken {
    Fastener fastener;
    workshop::Nut nut = workshop::Nut::Tension;
    std::optional<double> drag;
    std::optional<TorqueUnit> drag_unit;
    bool has_limits = false;
    DecimalSign sign = DecimalSign::Unknown;
};

/// "50-70 in-lb", "50 to 70 N-m": with a unit, since a thread looks the same without.
bool takeLimits(Spoken &spoken, std::string_view chunk)
{
    const auto range = takeRange(chunk, spoken.sign);
    const auto unit = range ? torqueUnitSaid(chunk) : std::nullopt;
    if (!unit)
        return false;
    spoken.fastener.torque_min = range->first;
    spoken.fastener.torque_max = range->second;
    spoken.fastener.torque_unit = *unit;
    spoken.has_limits = true;
    return true;
}

bool takeDrag(Spoken &spoken, std::string_view chunk)
{
    auto rest = behindDrag(chunk);
    if (!rest)
        return false;
    const auto drag = takeNumber(*rest, spoken.sign);
    const auto unit = rest->empty() ? std::nullopt : torqueUnitSaid(*rest);
    if (!drag || (!rest->empty() && !unit))
        return false;
    spoken.drag = drag;
    spoken.drag_unit = unit;
    return true;
}

bool takeLocking(Spoken &spoken, std::string_view chunk)
{
    const auto locking = lockingSaid(chunk);
    if (locking)
        spoken.fastener.locking = *locking;
    return locking.has_value();
}

bool takeNut(Spoken &spoken, std::string_view chunk)
{
    const auto nut = nutSaid(chunk);
    if (nut)
        spoken.nut = *nut;
    return nut.has_value();
}

/// A torque that was not read is told: the table's limits would stand in its place.
std::optional<Message> whyNotRead(std::string_view chunk)
{
    auto rest = behindDrag(chunk);
    const bool isDrag = rest && takeNumber(*rest, DecimalSign::Comma);
    if (!isDrag && !saysTorque(chunk))
        return std::nullopt;
    return Message{
        "“{0}” was not understood: write both limits, as 50-70 in-lb, the drag as drag 6 "
        "in-lb, and a comma between them.",
        {std::string(chunk)}};
}

/// "M6", "m6", "M6x1", "M10x1.25", and no part number that begins alike.
bool isMetric(std::string_view word)
{
    constexpr std::string_view digits = "0123456789";
    if (!word.starts_with('M') && !word.starts_with('m'))
        return false;
    word.remove_prefix(1);
    const auto size = std::min(word.find_first_not_of(digits), word.size());
    const auto pitch = word.substr(size);
    return size > 0 &&
           (pitch.empty() || (pitch.size() > 1 && pitch.front() == 'x' &&
                              pitch.find_first_not_of("0123456789.", 1) == std::string_view::npos));
}

/// "1/4-28", "10-32", "#10-32", "M6": what can be nothing else.
bool isThread(std::string_view word)
{
    return isMetric(word) || (word.find('-') != std::string_view::npos &&
                              word.find_first_not_of("#0123456789/-") == std::string_view::npos);
}

/// "1/4-28" of an inch's "1/4"-28".
std::string withoutInchSign(std::string_view words)
{
    std::string plain(words);
    if (const auto inch = plain.find("\"-"); inch != std::string::npos)
        plain.erase(inch, 1);
    return plain;
}

constexpr std::array<std::string_view, 5> seriesWords{"unjf", "unjc", "unef", "unf", "unc"};

/// "1/4-28 UNF", "1/4-28 UNF-3A": the count of its threads says that already.
std::string_view withoutSeries(std::string_view words)
{
    const std::string said = folded(words);
    for (const std::string_view series : seriesWords) {
        if (!said.starts_with(series))
            continue;
        auto end = series.size();
        // How closely it fits, outside or inside.
        for (const std::string_view fit :
             {"-1a", "-1b", "-2a", "-2b", "-3a", "-3b", " 1a", " 1b", " 2a", " 2b", " 3a", " 3b"})
            end += std::string_view(said).substr(end).starts_with(fit) ? fit.size() : 0;
        if (end == said.size() || said[end] == ' ')
            return trimmed(words.substr(end));
    }
    return words;
}

/// Where the thread ends that begins the words: at a blank, and in "1/4-28UNF" before its series.
std::size_t endOfThread(std::string_view words)
{
    const auto blank = std::min(words.find(' '), words.size());
    const std::string said = folded(words.substr(0, blank));
    for (const std::string_view series : seriesWords) {
        const auto at = said.find(series);
        if (at != std::string::npos && at > 0 && isDigit(said[at - 1]))
            return at;
    }
    return blank;
}

bool takeThread(Spoken &spoken, std::string_view chunk)
{
    const std::string joined = withThreadInOneWord(withoutInchSign(chunk));
    const std::string_view words = joined;
    const auto end = endOfThread(words);
    const auto word = words.substr(0, end);
    const auto rest = withoutSeries(trimmed(words.substr(end)));
    if (!isThread(word) || (!rest.empty() && !takeNut(spoken, rest)))
        return false;
    spoken.fastener.thread = word;
    if (isMetric(word))
        spoken.fastener.thread.front() = 'M';
    return true;
}

/// The unit of the project's own limits, where both are its own.
std::optional<TorqueUnit> ownUnit(std::string_view thread, workshop::Nut nut,
                                  const std::vector<workshop::OwnLimit> &own)
{
    const auto *limit = workshop::ownLimit(own, workshop::torqueSubject(thread, word(nut)));
    return limit && limit->minimum && limit->maximum ? torqueUnitSaid(limit->unit) : std::nullopt;
}

/// The table's limits, or the project's own in the unit of its drawing.
std::optional<Message> proposeLimits(Spoken &spoken, const std::vector<workshop::OwnLimit> &own)
{
    Fastener &fastener = spoken.fastener;
    const auto known = workshop::torque(fastener.thread, spoken.nut, 0);
    if (!known)
        return Message{"The torque table has no thread “{0}”: write the limits of the drawing "
                       "behind it, like 8-10 N-m.",
                       {fastener.thread}};
    const auto unit = ownUnit(known->thread, spoken.nut, own).value_or(fastener.torque_unit);
    if (unit != fastener.torque_unit && spoken.drag && !spoken.drag_unit)
        return Message{"The project's own limit of {0} is in {1}: write the unit of the drag, too.",
                       {known->thread, std::string(word(unit))}};
    fastener.torque_unit = unit;
    const auto proposal = proposalFor(fastener, spoken.nut, own);
    if (!proposal)
        return proposal.reason();
    fastener.torque_min = proposal->least;
    fastener.torque_max = proposal->most;
    return std::nullopt;
}

std::optional<Message> addLimits(Spoken &spoken, const std::vector<workshop::OwnLimit> &own)
{
    Fastener &fastener = spoken.fastener;
    if (!fastener.thread.empty() && !spoken.has_limits) {
        if (auto why = proposeLimits(spoken, own))
            return why;
    }
    if (spoken.drag)
        fastener.torque_drag = converted(
            *spoken.drag, spoken.drag_unit.value_or(fastener.torque_unit), fastener.torque_unit);
    return whyNotLimits(fastener);
}

} // namespace

Result<Fastener, Message> readFastenerLine(std::string_view line,
                                           const std::vector<workshop::OwnLimit> &own,
                                           DecimalSign sign)
{
    const auto parts = partsOfLine(line);
    if (parts.empty())
        return Message{"Say where the fastener is.", {}};
    Spoken spoken{.sign = sign};
    if (auto wrong = takePlace(spoken.fastener, parts.front()))
        return *wrong;
    if (auto why = saysTorque(parts.front()) ? whyNotRead(parts.front()) : std::nullopt)
        return *why;
    for (auto part = parts.begin() + 1; part != parts.end(); ++part) {
        const bool isKnown = takeLimits(spoken, *part) || takeDrag(spoken, *part) ||
                             takeThread(spoken, *part) || takeNut(spoken, *part) ||
                             takeLocking(spoken, *part);
        if (isKnown)
            continue;
        if (auto why = whyNotRead(*part))
            return *why;
        std::string &hardware = spoken.fastener.hardware;
        hardware += (hardware.empty() ? "" : ", ") + withPlainHyphens(*part);
    }
    if (auto wrong = addLimits(spoken, own))
        return *wrong;
    return spoken.fastener;
}

} // namespace lastrivet::fasteners
