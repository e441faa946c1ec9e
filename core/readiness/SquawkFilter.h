// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Words.h"
#include "core/readiness/SquawkOrder.h"
#include "core/records/Records.h"

#include <optional>
#include <string>
#include <vector>

namespace lastrivet::readiness {

/// Which squawks of the list are wanted; what is not set lets everything through.
struct SquawkFilter {
    enum class Standing {
        Outstanding, ///< neither verified nor accepted
        ToFix,       ///< outstanding and not fixed
        ToVerify,    ///< fixed, and somebody has to look at it
        Done,        ///< verified or accepted
        All,
    };

    Standing standing = Standing::Outstanding;
    std::optional<Severity> severity;
    /// This part and everything below it.
    Id<Component> part;
    /// By whose word it ends; a squawk that names nobody is the builder's.
    std::optional<SignerRole> verifier;
    Id<Inspection> inspection;
    std::optional<Reachable> reachable;
    /// Words that all occur in number, title, part, detail, plan, correction or basis.
    std::string text;

    friend bool operator==(const SquawkFilter &, const SquawkFilter &) = default;
};

/// `asOf` is the moment that the list was made for.
bool passes(const SquawkFilter &filter, const ListedSquawk &listed, const Records &records,
            Moment asOf);

/// Those of a list that pass, in its order.
std::vector<ListedSquawk> filtered(std::vector<ListedSquawk> list, const SquawkFilter &filter,
                                   const Records &records, Moment asOf);

} // namespace lastrivet::readiness

namespace lastrivet {

template <> struct Words<readiness::SquawkFilter::Standing> {
    static constexpr std::array<std::string_view, 5> list{"outstanding", "to_fix", "to_verify",
                                                          "done", "all"};
};
template <> struct Words<readiness::Reachable> {
    static constexpr std::array<std::string_view, 4> list{"not_for_long", "no_longer", "yes",
                                                          "done"};
};

} // namespace lastrivet
