// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/ReadinessText.h"

#include "app/cli/PlainText.h"
#include "app/cli/WhatFollows.h"
#include "core/readiness/Sentences.h"
#include "core/today/Today.h"
#include "core/today/WorkOrder.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <fmt/ostream.h>
#include <fmt/ranges.h>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet::cli {

using readiness::Answer;
using readiness::Blocker;
using readiness::ClosingAnswer;
using readiness::State;
using readiness::Weight;

namespace {

constexpr std::size_t nearest = 3;

class ReadinessText {
public:
    ReadinessText(const Answer &answer, const Records &records, const Profile &profile,
                  const ReadinessScope &scope, std::ostream &out)
        : m_answer(answer)
        , m_records(records)
        , m_profile(profile)
        , m_scope(scope)
        , m_out(out)
    {
        for (const ClosingAnswer &closing : answer.closings) {
            if (scope.holds(closing.id))
                m_shown.push_back(&closing);
        }
    }

    void print() const
    {
        fmt::print(m_out, "{}, as of {}, by the rules of profile {}.\n",
                   onOneLine(m_records.project.name), m_answer.as_of.text(), m_answer.profile);
        if (m_shown.empty())
            m_out << "There are no closings on record.\n";
        else if (tellsAll())
            printHeadline();
        for (const State state : {State::ClosedEarly, State::Hold, State::ReadyToInspect,
                                  State::ReadyToSign, State::Clear, State::Closed})
            printState(state);
        printNotBegun();
        if (tellsAll()) {
            printAircraft();
            printWhatFollows(m_answer, m_records, m_out);
        }
    }

private:
    bool tellsAll() const { return m_scope.closings.empty(); }

    bool isAircraft(const ClosingAnswer &closing) const
    {
        return m_records.find(closing.id)->scope == ClosingScope::Aircraft;
    }

    /// True when a closing is listed with those of this state; one that was asked for by id is,
    /// even if nothing in it was begun.
    bool isInState(const ClosingAnswer &closing, State state) const
    {
        const bool isTold =
            !tellsAll() || (!isAircraft(closing) && (closing.begun || isClosed(closing.state)));
        return isTold && closing.state == state;
    }

    bool isNotBegun(const ClosingAnswer &closing) const
    {
        return tellsAll() && !isAircraft(closing) && !closing.begun && !isClosed(closing.state);
    }

    template <class Condition> std::int64_t count(Condition condition) const
    {
        return std::count_if(m_shown.begin(), m_shown.end(),
                             [&](const ClosingAnswer *closing) { return condition(*closing); });
    }

    void printHeadline() const
    {
        const today::Tally tally = today::tally(m_records, m_answer);
        for (const Message &sentence : today::headline(tally))
            m_out << english(sentence) << '\n';
        if (tally.not_begun > 0)
            fmt::print(m_out, "{} not begun.\n",
                       tally.not_begun == 1 ? "1 is" : fmt::format("{} are", tally.not_begun));
    }

    void printState(State state) const
    {
        const auto isListed = [&](const ClosingAnswer &closing) {
            return isInState(closing, state);
        };
        if (count(isListed) == 0)
            return;
        fmt::print(m_out, "\n{} ({})\n", capitalised(english(readiness::stateInWords(state))),
                   count(isListed));
        for (const ClosingAnswer *closing : m_shown) {
            if (isListed(*closing))
                printClosing(*closing);
        }
    }

    void printAircraft() const
    {
        for (const ClosingAnswer *closing : m_shown) {
            if (!isAircraft(*closing))
                continue;
            fmt::print(m_out, "\nThe whole aircraft: {}\n",
                       english(readiness::stateInWords(closing->state)));
            printClosing(*closing);
        }
    }

    void printTitle(const ClosingAnswer &closing) const
    {
        const Closing &record = *m_records.find(closing.id);
        fmt::print(m_out, "  {}  {}\n", closing.id.value(), onOneLine(record.title));
    }

    void printClosing(const ClosingAnswer &closing) const
    {
        printTitle(closing);
        if (!tellsAll())
            printOnRecord(closing.on_record);
        if (closing.state == State::Closed)
            return;
        if (closing.state == State::ClosedEarly)
            printWhyEarly(*m_records.find(closing.id));
        // All of them, for a closing that was asked for by id.
        const auto blockers = m_order.nearestFirst(closing);
        const std::size_t shown = tellsAll() ? std::min(nearest, blockers.size()) : blockers.size();
        for (std::size_t i = 0; i < shown; ++i)
            printBlocker(*blockers[i], closing.state);
        if (blockers.size() > shown)
            fmt::print(m_out, "      and {} more\n", blockers.size() - shown);
        if (closing.state == State::ClosedEarly)
            printWhatClearsGaps(*m_records.find(closing.id));
    }

    /// Says how much is on record: a clear closing means little where there is little.
    void printOnRecord(const readiness::OnRecord &known) const
    {
        const std::pair<std::string_view, std::int64_t> kinds[] = {
            {"steps", known.steps},
            {"log entries", known.sessions},
            {"photographs", known.photos},
            {"squawks", known.squawks},
            {"deviations", known.deviations},
            {"bulletins", known.bulletins},
            {"lines of fasteners", known.fasteners},
            {"measurements", known.measurements},
            {"packing lines", known.part_lines},
            {"uses of material", known.material_uses},
            {"lines to check", known.checks}};
        std::vector<std::string> there;
        std::vector<std::string_view> missing;
        for (const auto &[kind, number] : kinds) {
            if (number == 0)
                missing.push_back(kind);
            else
                there.push_back(fmt::format("{} {}", kind, number));
        }
        if (!there.empty())
            fmt::print(m_out, "      On record: {}\n", fmt::join(there, ", "));
        if (!missing.empty())
            fmt::print(m_out, "      Nothing on record of: {}\n", fmt::join(missing, ", "));
    }

    /// What no blocker says of a closing that somebody else closed.
    void printWhyEarly(const Closing &closing) const
    {
        if (closing.made_by == MadeBy::Factory)
            m_out
                << "      The maker's document for it is not on record (take it in and link it)\n";
        else if (closing.made_by == MadeBy::EarlierBuilder)
            fmt::print(m_out, "      {}\n", capitalised(english(readiness::closedBeforeRecords())));
        else
            fmt::print(m_out, "      Closed on {}; missing on that day:\n", closedOn(closing));
    }

    /// The last day by the answer's.
    std::string closedOn(const Closing &closing) const
    {
        std::string day;
        for (const Closing::Event &event : closing.events) {
            if (happened(event.closed_on, m_answer.as_of))
                day = (event.approximate ? "about " : "") + event.closed_on->text();
        }
        return day;
    }

    void printWhatClearsGaps(const Closing &closing) const
    {
        if (closing.made_by != MadeBy::Factory)
            fmt::print(m_out, "      To clear it: {}\n",
                       english(readiness::gapsClearedBy(closing, m_profile)));
    }

    /// Only a late acceptance clears what was missing when it was closed.
    void printBlocker(const Blocker &blocker, State state) const
    {
        const std::string sentence = onOneLine(english(readiness::sentence(blocker, m_records)));
        fmt::print(m_out, "      {}{}", blocker.weight == Weight::Must ? "" : "advice: ", sentence);
        if (!isClosed(state))
            fmt::print(m_out, " ({})",
                       onOneLine(english(readiness::clearedBy(blocker, m_records, m_profile))));
        m_out << '\n';
    }

    void printNotBegun() const
    {
        const auto left =
            count([this](const ClosingAnswer &closing) { return isNotBegun(closing); });
        if (left == 0)
            return;
        fmt::print(m_out, "\nNot begun: no work on record in their reach ({})\n", left);
        for (const ClosingAnswer *closing : m_shown) {
            if (isNotBegun(*closing))
                printTitle(*closing);
        }
    }

    const Answer &m_answer;
    const today::WorkOrder m_order{m_answer};
    const Records &m_records;
    const Profile &m_profile;
    const ReadinessScope &m_scope;
    std::ostream &m_out;
    std::vector<const ClosingAnswer *> m_shown;
};

} // namespace

bool ReadinessScope::holds(Id<Closing> id) const
{
    return closings.empty() || std::binary_search(closings.begin(), closings.end(), id);
}

void printReadiness(const Answer &answer, const Records &records, const Profile &profile,
                    const ReadinessScope &scope, std::ostream &out)
{
    ReadinessText(answer, records, profile, scope, out).print();
}

} // namespace lastrivet::cli
