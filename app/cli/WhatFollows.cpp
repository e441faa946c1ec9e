// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/WhatFollows.h"

#include "app/cli/PlainText.h"
#include "core/readiness/Names.h"
#include "core/readiness/Sentences.h"

#include <algorithm>
#include <fmt/ostream.h>
#include <fmt/ranges.h>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lastrivet::cli {

using readiness::Answer;
using readiness::RecordAndClosings;
using readiness::VisitPlanRow;

namespace {

constexpr std::size_t longestList = 10;

/// The records that closings would bury, each with those closings; only of closings that were
/// begun, since others will not be closed soon.
std::vector<RecordAndClosings> soonOutOfReach(const Answer &answer)
{
    std::map<RecordRef, IdSet<Closing>> closings;
    for (const auto &chance : answer.last_chance) {
        const auto *closing = answer.closing(chance.closing);
        if (closing && !closing->begun)
            continue;
        for (const RecordRef &item : chance.items)
            closings[item].push_back(chance.closing);
    }
    std::vector<RecordAndClosings> rows;
    for (auto &[record, before] : closings)
        rows.push_back({record, std::move(before)});
    return rows;
}

class WhatFollows {
public:
    WhatFollows(const Answer &answer, const Records &records, std::ostream &out)
        : m_answer(answer)
        , m_records(records)
        , m_out(out)
    {
    }

    void print() const
    {
        printList("Workable now", m_answer.workable, [this](Id<Step> step) {
            return nameOf({RecordType::Step, step.value()});
        });
        printList("What unlocks most", m_answer.unlock, [this](const RecordAndClosings &row) {
            return fmt::format("{}: {}", nameOf(row.record),
                               counted(std::int64_t(row.closings.size()), "closing"));
        });
        printList("What one visit could cover, after how much work in all", m_answer.visit_plan,
                  [this](const VisitPlanRow &row) { return visitText(row); });
        printList("Before it is out of reach", soonOutOfReach(m_answer),
                  [this](const RecordAndClosings &row) {
                      return lastChanceOf(row) +
                             "\n      before closing: " + titlesOf(row.closings);
                  });
        printList("Out of reach already", m_answer.out_of_reach,
                  [this](const RecordAndClosings &row) {
                      return nameOf(row.record) + "\n      to reopen: " + titlesOf(row.closings);
                  });
        printList("To complete in the records", m_answer.to_complete,
                  [this](const readiness::ToComplete &row) {
                      return onOneLine(capitalised(english(sentence(row, m_records))));
                  });
    }

private:
    template <class Row, class TextOf>
    void printList(std::string_view head, const std::vector<Row> &rows, TextOf textOf) const
    {
        if (rows.empty())
            return;
        fmt::print(m_out, "\n{} ({})\n", head, rows.size());
        for (std::size_t i = 0; i < std::min(longestList, rows.size()); ++i)
            fmt::print(m_out, "  {}\n", textOf(rows[i]));
        if (rows.size() > longestList)
            fmt::print(m_out, "  and {} more\n", rows.size() - longestList);
    }

    std::string nameOf(RecordRef record) const
    {
        return onOneLine(capitalised(readiness::nameOf(m_records, record)));
    }

    /// Of a closing, what is advised before these are closed, about themselves or about a box
    /// inside: its name would say nothing.
    std::string lastChanceOf(const RecordAndClosings &row) const
    {
        std::set<std::string> sentences;
        if (row.record.type == RecordType::Closing) {
            for (const Id<Closing> id : row.closings) {
                for (const auto &blocker : m_answer.closing(id)->blockers) {
                    if (blocker.record == row.record)
                        sentences.insert(english(sentence(blocker, m_records)));
                }
            }
        }
        if (sentences.empty())
            return nameOf(row.record);
        return onOneLine(capitalised(fmt::format("{}", fmt::join(sentences, "; "))));
    }

    std::string titlesOf(const IdSet<Closing> &closings) const
    {
        std::string text;
        for (const Id<Closing> id : closings)
            text += fmt::format("{}{} ({})", text.empty() ? "" : ", ",
                                onOneLine(m_records.find(id)->title), id.value());
        return text;
    }

    std::string whenText(const VisitPlanRow &row) const
    {
        const auto *closing = m_answer.closing(row.closing);
        if (closing && !closing->begun)
            return "not begun";
        const bool isWaiting = closing && closing->state != readiness::State::Hold;
        return isWaiting ? "now" : "after " + hoursText(row.cumulative_minutes);
    }

    std::string visitText(const VisitPlanRow &row) const
    {
        std::string text =
            fmt::format("{}  {}: {}", row.closing.value(),
                        onOneLine(m_records.find(row.closing)->title), whenText(row));
        if (row.unknown_estimates > 0)
            text += fmt::format(", {} without an estimate", row.unknown_estimates);
        if (row.other_blockers > 0)
            text += fmt::format(", {} in the way", counted(row.other_blockers, "other thing"));
        return text;
    }

    const Answer &m_answer;
    const Records &m_records;
    std::ostream &m_out;
};

} // namespace

void printWhatFollows(const Answer &answer, const Records &records, std::ostream &out)
{
    WhatFollows(answer, records, out).print();
}

} // namespace lastrivet::cli
