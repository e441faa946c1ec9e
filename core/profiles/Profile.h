// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/WordSet.h"
#include "core/profiles/ProfileVocabulary.h"
#include "core/records/Vocabulary.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lastrivet {

struct Closing;

/// The rules of one country's authority, read from a data file; a project keeps the copy it was
/// made with.
///
/// Every rule names the id of its `source` and the `mark` of how far that source was seen.
struct Profile {
    /// Why a single value of the profile is what it is.
    struct Basis {
        SingleRule rule = SingleRule::LateAcceptanceBy;
        std::string text;
        std::string source;
        Mark mark = Mark::Memory;

        friend bool operator==(const Basis &, const Basis &) = default;
    };
    /// A hold point that the closings of its scope get.
    struct HoldPointRule {
        HoldPointKind kind = HoldPointKind::OwnCheck;
        SignerRole signer_role = SignerRole::Builder;
        bool required = true;
        ClosingScope scope = ClosingScope::Region;
        /// When not empty: only where the closing's reach holds a part of one of these kinds.
        WordSet<ComponentKind> component_kinds;
        std::string text;
        std::string source;
        Mark mark = Mark::Memory;

        /// Whether a new closing gets this hold point. A region does when it is permanent, the
        /// aircraft always; what a factory closed gets none. `inReach`: the kinds of the parts in
        /// the closing's reach.
        bool appliesTo(const Closing &closing, WordSet<ComponentKind> inReach) const;
        friend bool operator==(const HoldPointRule &, const HoldPointRule &) = default;
    };
    struct ChecklistItem {
        std::string item;
        std::string source;
        /// Paragraph within the source; empty for the whole.
        std::string at;
        Mark mark = Mark::Memory;

        friend bool operator==(const ChecklistItem &, const ChecklistItem &) = default;
    };
    /// What an inspector looks at in one kind of structure; offered as checks of a new closing.
    struct Checklist {
        std::string key;
        std::string title;
        /// Empty means any construction.
        WordSet<Construction> constructions;
        /// Empty means any kind of part.
        WordSet<ComponentKind> component_kinds;
        std::vector<ChecklistItem> items;

        /// A part whose construction is not known gets only the lists that ask for none.
        bool appliesTo(ComponentKind kind, std::optional<Construction> construction) const;
        friend bool operator==(const Checklist &, const Checklist &) = default;
    };
    /// A document on the way to the certificate.
    struct Document {
        std::string key;
        std::string title;
        Need need = Need::Expected;
        /// When it is due, or in which cases; may be empty.
        std::string when;
        std::string source;
        Mark mark = Mark::Memory;

        friend bool operator==(const Document &, const Document &) = default;
    };
    /// How long an aircraft is flown on trial.
    struct TestPeriod {
        std::string applies_to;
        std::optional<std::int64_t> hours;
        std::string text;
        std::string source;
        Mark mark = Mark::Memory;

        friend bool operator==(const TestPeriod &, const TestPeriod &) = default;
    };
    struct CreditRule {
        std::string text;
        std::string source;
        Mark mark = Mark::Memory;

        friend bool operator==(const CreditRule &, const CreditRule &) = default;
    };
    /// What the authority says about the builder's share of the work.
    struct Credit {
        std::vector<std::string> columns;
        std::string passes_when;
        std::vector<CreditRule> rules;

        friend bool operator==(const Credit &, const Credit &) = default;
    };
    struct Caution {
        std::string id;
        std::string text;

        friend bool operator==(const Caution &, const Caution &) = default;
    };
    /// The country's words for some of ours.
    struct CountryWords {
        std::string squawk = "squawk";
        std::string squawks = "squawks";
        std::string finding = "finding";
        std::string findings = "findings";
        std::string undercarriage = "undercarriage";
        std::string inspector = "inspector";
        std::string adviser = "adviser";
        std::string authority = "authority";
        std::string certificate = "certificate";

        friend bool operator==(const CountryWords &, const CountryWords &) = default;
    };
    struct Source {
        std::string id;
        std::string title;
        /// As the source states it; empty when it states none.
        std::string edition;
        Mark mark = Mark::Memory;
        /// A day, or empty.
        std::string read_on;
        std::string note;

        friend bool operator==(const Source &, const Source &) = default;
    };

    std::string id;
    std::string name;
    /// The day on which the profile was last gone through.
    std::string edition;
    WordSet<SignerRole> late_acceptance_by;
    bool factory_closing_needs_document = false;
    CreditBasis credit_basis = CreditBasis::Tenths;
    std::int64_t interior_photos = 0;
    bool one_open_request = false;
    std::int64_t late_entry_days = 30;
    std::vector<Basis> basis;
    std::vector<HoldPointRule> hold_points;
    std::vector<Checklist> checklists;
    std::vector<Document> documents;
    std::vector<TestPeriod> test_period;
    Credit credit;
    std::vector<Caution> cautions;
    CountryWords words;
    std::vector<Source> sources;
    /// The profile as JSON text, always written the same way (`profileJson`); kept in the project
    /// and in interchange files.
    std::string json;

    const Source *findSource(std::string_view sourceId) const;
    /// A source as people cite it: title, edition, paragraph, and how far it was seen when that is
    /// less than read. The id itself when no such source is listed.
    std::string citation(std::string_view sourceId, Mark mark, std::string_view at = {}) const;

    friend bool operator==(const Profile &, const Profile &) = default;
};

} // namespace lastrivet
