// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/balance/Balance.h"
#include "core/balance/Units.h"
#include "core/records/Envelope.h"
#include "core/records/LoadingCase.h"

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

/// Whether weight and centre of gravity lie within the envelope, on its edge included. An envelope
/// of less than three corners holds nothing.
bool isWithin(const Envelope &envelope, double weight, double cg, Units units);

} // namespace lastrivet::balance
