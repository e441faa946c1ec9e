// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Answer.h"

#include <utility>
#include <vector>

namespace lastrivet::readiness {

/// Collects blockers, rule after rule.
class Findings {
public:
    explicit Findings(std::vector<Blocker> &blockers)
        : m_blockers(blockers)
    {
    }

    /// What is added from now on is found by this rule.
    void beginRule(Rule rule) { m_rule = rule; }

    template <class Record> void must(const Record &record, std::optional<SignerRole> waitsFor = {})
    {
        add(Weight::Must, record, waitsFor);
    }
    template <class Record> void should(const Record &record)
    {
        add(Weight::Should, record, std::nullopt);
    }
    template <class Record>
    Blocker &add(Weight weight, const Record &record, std::optional<SignerRole> waitsFor,
                 std::vector<Fact> facts = {})
    {
        m_blockers.push_back(
            {m_rule, weight, {Record::type, record.id.value()}, waitsFor, std::move(facts)});
        return m_blockers.back();
    }

private:
    std::vector<Blocker> &m_blockers;
    Rule m_rule = Rule::ThinRecord;
};

} // namespace lastrivet::readiness
