// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/records/Bulletin.h"
#include "core/records/Deviation.h"
#include "core/records/Squawk.h"

namespace lastrivet::readiness {

/// Whether squawks and papers are open; `counts(moment)` tells whether a moment counts.

template <class Counts> bool isOpen(const Squawk &squawk, const Counts &counts)
{
    return counts(squawk.found_on) && !counts(squawk.verified_on) && !counts(squawk.accepted_on);
}

template <class Counts> bool isUndecided(const Deviation &deviation, const Counts &counts)
{
    return counts(deviation.raised_on) && !counts(deviation.decided_on);
}

template <class Counts> bool isBuiltThoughRejected(const Deviation &deviation, const Counts &counts)
{
    return counts(deviation.decided_on) && deviation.decision == Decision::Rejected &&
           counts(deviation.built_on) && !counts(deviation.undone_on);
}

template <class Counts> bool isOpen(const Deviation &deviation, const Counts &counts)
{
    return isUndecided(deviation, counts) || isBuiltThoughRejected(deviation, counts);
}

template <class Counts> bool isOpen(const Bulletin &bulletin, const Counts &counts)
{
    return counts(bulletin.received_on) && bulletin.applies.value_or(true) &&
           !counts(bulletin.complied_on);
}

} // namespace lastrivet::readiness
