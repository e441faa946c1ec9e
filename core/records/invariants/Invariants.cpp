// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/records/invariants/Invariants.h"

#include "core/records/invariants/Families.h"
#include "core/records/invariants/Review.h"

namespace lastrivet {

namespace {

using namespace invariants;

constexpr void (*families[])(Review &) = {
    checkRequired,  checkReferences, checkNumbers, checkTree,   checkSteps,
    checkEvents,    checkEnclosure,  checkFactory, checkDates,  checkNeeds,
    checkAuthority, checkLog,        checkCounts,  checkCredit,
};

std::vector<Violation> outcome(Review review)
{
    for (const auto check : families)
        check(review);
    return review.take();
}

} // namespace

std::vector<Violation> violations(const Records &records, const Profile &profile,
                                  std::span<const RecordRef> touched)
{
    return outcome(Review{records, profile, touched});
}

std::vector<Violation> violations(const Records &records, const Profile &profile,
                                  std::span<const RecordRef> touched, const Records &before)
{
    return outcome(Review{records, profile, touched, before});
}

std::vector<Violation> violations(const Records &records, const Profile &profile)
{
    return outcome(Review{records, profile});
}

} // namespace lastrivet
