// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"

// The vocabularies of rule profiles; the words are the keys in files, never translated.
namespace lastrivet {

/// How the builder's share of the work is counted.
enum class CreditBasis {
    Ticks,
    Tenths,
};
template <> struct Words<CreditBasis> {
    static constexpr std::array<std::string_view, 2> list{"ticks", "tenths"};
};

/// How far the source of a rule was seen: its own text, quoted by others, or only remembered.
enum class Mark {
    Read,
    SecondHand,
    Memory,
};
template <> struct Words<Mark> {
    static constexpr std::array<std::string_view, 3> list{"read", "second-hand", "memory"};
};

/// The rules of a profile that are one value each.
enum class SingleRule {
    LateAcceptanceBy,
    FactoryClosingNeedsDocument,
    CreditBasis,
    InteriorPhotos,
    OneOpenRequest,
    LateEntryDays,
};
template <> struct Words<SingleRule> {
    static constexpr std::array<std::string_view, 6> list{
        "late_acceptance_by", "factory_closing_needs_document",
        "credit_basis",       "interior_photos",
        "one_open_request",   "late_entry_days"};
};

/// Who has to have a document.
enum class Need {
    Required,
    Expected,
    SomeCases,
    Resale,
};
template <> struct Words<Need> {
    static constexpr std::array<std::string_view, 4> list{"required", "expected", "some_cases",
                                                          "resale"};
};

} // namespace lastrivet
