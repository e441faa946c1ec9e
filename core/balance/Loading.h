// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"
#include "core/balance/Units.h"
#include "core/records/Envelope.h"
#include "core/records/LoadingCase.h"
#include "core/records/Records.h"

#include <vector>

namespace lastrivet::balance {

/// Something that may be loaded: at least and at most so much of it, at one arm.
struct Load {
    std::string what;
    double least = 0;
    double most = 0;
    double arm = 0;
};

/// A way of loading: how much of each load, and what it comes to.
struct Loading {
    /// One for each load, in order.
    std::vector<double> weights;
    Balance sum;
};

/// The loadings whose centre of gravity lies farthest forward and farthest aft.
struct Extremes {
    Loading forward;
    Loading aft;
};

/// The extremes over all amounts of all loads, as far as `mostWeight` allows; arms grow to the
/// rear. Exact: the farthest aft is reached by the loads farthest aft, one after the other, as long
/// as each lies behind the centre of gravity so far.
///
/// Refuses loads below zero or with less than their least, and when the least loads are too heavy.
Result<Extremes, Message> extremes(const Item &empty, std::span<const Load> loads,
                                   std::optional<double> mostWeight);

/// The loads of a case in other units; each may be left out.
std::vector<Load> loadsOf(const LoadingCase &loading, Units units);

/// What may be loaded, over all live cases: of each load no less than the least and no more than
/// the most that any case has of it; one that a case leaves out may be left out. Loads are told
/// apart by what they are and by their arm, in the order in which the cases name them.
std::vector<Load> loadsOf(const Records &records, Units units);

/// A case on top of the empty aeroplane; by itself when `empty` is null, since before the weighing
/// people write the estimated empty weight into their cases.
Result<Balance, Message> loaded(const Item *empty, const LoadingCase &loading,
                                std::optional<Chord> chord, Units units);

/// The envelope that holds: the live one with the greatest id; null when there is none.
const Envelope *envelopeOf(const Records &records);
/// Its chord in other units; nothing when it has none, or one without length.
std::optional<Chord> chordOf(const Envelope &envelope, Units units);
/// The most the aeroplane may weigh, as the project says; nothing when it does not.
std::optional<double> mostWeight(const Records &records, Units units);

/// Whether weight and centre of gravity lie within the envelope, on its edge included. An envelope
/// of less than three corners holds nothing.
bool isWithin(const Envelope &envelope, double weight, double cg, Units units);

} // namespace lastrivet::balance
