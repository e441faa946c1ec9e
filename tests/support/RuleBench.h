// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/readiness/Readiness.h"
#include "tests/support/ProjectBuilder.h"

#include <optional>
#include <string_view>

namespace lastrivet::test {

/// A wing with a panel and a rib in it, and one closing of the panel; asks what one rule finds.
class RuleBench : public ProjectBuilder {
public:
    explicit RuleBench(readiness::Rule rule);

    readiness::Rule rule;
    Id<Component> wing;
    Id<Component> panel;
    Id<Component> rib;
    Id<Component> fuselage;
    Id<Closing> box;

    /// What the rule says of the closing about the record; empty when it says nothing.
    template <class Record>
    std::optional<readiness::Blocker> about(Id<Record> id, std::string_view asOf) const
    {
        return about(RecordRef{Record::type, id.value()}, asOf);
    }
    std::optional<readiness::Blocker> about(RecordRef record, std::string_view asOf) const;
    /// True when the rule finds the record, with weight must.
    template <class Record> bool must(Id<Record> id, std::string_view asOf) const
    {
        const auto blocker = about(id, asOf);
        return blocker && blocker->weight == readiness::Weight::Must;
    }
    /// True when the rule finds the record, as advice.
    template <class Record> bool should(Id<Record> id, std::string_view asOf) const
    {
        const auto blocker = about(id, asOf);
        return blocker && blocker->weight == readiness::Weight::Should;
    }
    template <class Record> bool quiet(Id<Record> id, std::string_view asOf) const
    {
        return !about(id, asOf);
    }
    readiness::Answer ask(std::string_view asOf) const;
    readiness::ClosingAnswer askBox(std::string_view asOf) const;

    /// A signed hold point of the closing.
    Id<HoldPoint> signedPoint(HoldPointKind kind, SignerRole signer, std::string_view signedOn);
    /// A step that may follow the closing.
    Id<Step> followingStep();
};

} // namespace lastrivet::test
