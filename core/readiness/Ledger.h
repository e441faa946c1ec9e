// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <cstdint>
#include <vector>

namespace lastrivet::readiness {

/// What the records say to one rule. Where nothing is on record, a rule never counts as met.
enum class Outcome { Met, NotMet, Advice, NothingOnRecord };

/// One rule of one closing: how many records it looked at, and those that do not meet it.
struct LedgerLine {
    Rule rule;
    Outcome outcome;
    /// Records that the rule speaks of; 0 where nothing is on record.
    std::int64_t looked_at = 0;
    std::vector<Blocker> blockers;

    friend bool operator==(const LedgerLine &, const LedgerLine &) = default;
};

/// Every rule, in the order in which an inspector asks: signatures, boxes within, work, hardware,
/// materials, then the record itself. Of a closed closing as at its closing moment.
std::vector<LedgerLine> ledger(const ClosingAnswer &closing, const Records &records, Moment as_of);

/// What the rule asks for: "every fastener is fitted".
Message demandOf(Rule rule);
/// What its count counts: "14 lines", "4 locks".
Message countedBy(Rule rule, std::int64_t count);
Message inWords(Outcome outcome);

/// The moment at which the closing's blockers were judged: its closing moment, else `as_of`.
Moment judgedAt(const ClosingAnswer &closing, const Records &records, Moment as_of);

} // namespace lastrivet::readiness
