// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/WordSet.h"
#include "core/records/Vocabulary.h"

#include <cstdint>
#include <string>
#include <vector>

namespace lastrivet {

enum class CreditBasis { Ticks, Tenths };
template <> struct Words<CreditBasis> {
    static constexpr std::array<std::string_view, 2> list{"ticks", "tenths"};
};

/// The rules of one country's authority, read from a data file; a project keeps the copy it was
/// made with.
struct Profile {
    /// A hold point that a permanent, builder-made closing of the scope gets.
    struct HoldPointRule {
        HoldPointKind kind = HoldPointKind::OwnCheck;
        SignerRole signer_role = SignerRole::Builder;
        bool required = true;
        ClosingScope scope = ClosingScope::Region;
        /// When not empty: only where the closing's reach holds a part of one of these kinds.
        WordSet<ComponentKind> component_kinds;
        std::string source;
    };
    struct ChecklistItem {
        std::string item;
        std::string source;
    };
    /// What an inspector looks at in one kind of structure; offered as checks of a new closing.
    struct Checklist {
        std::string key;
        std::string title;
        WordSet<Construction> constructions;
        WordSet<ComponentKind> component_kinds;
        std::vector<ChecklistItem> items;
    };
    /// A document on the way to the certificate.
    struct Document {
        std::string key;
        std::string title;
        std::string need;
        std::string when;
        std::string source;
        std::string mark;
    };
    struct Caution {
        std::string id;
        std::string text;
    };
    struct Source {
        std::string id;
        std::string title;
        std::string edition;
        std::string mark;
        std::string read_on;
    };

    std::string id;
    std::string name;
    std::string edition;
    WordSet<SignerRole> late_acceptance_by;
    bool factory_closing_needs_document = false;
    CreditBasis credit_basis = CreditBasis::Tenths;
    std::int64_t interior_photos = 0;
    bool one_open_request = false;
    std::int64_t late_entry_days = 30;
    std::vector<HoldPointRule> hold_points;
    std::vector<Checklist> checklists;
    std::vector<Document> documents;
    std::vector<Caution> cautions;
    std::vector<Source> sources;
    /// The JSON text it was read from; kept in the project and in interchange files.
    std::string json;
};

} // namespace lastrivet
