// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"

#include <optional>
#include <span>
#include <string>

namespace lastrivet::balance {

/// Something with a weight and an arm from the datum, in units that all items share. Fuel that is
/// taken away again has a weight below zero.
struct Item {
    std::string name;
    double weight = 0;
    double arm = 0;
};

/// The mean aerodynamic chord: where its leading edge lies, and how long it is.
struct Chord {
    double lemac = 0;
    double length = 0;
};

/// What the items come to.
struct Balance {
    double weight = 0;
    double moment = 0;
    double cg = 0;
    /// (CG - LEMAC) x 100 / MAC; nothing without a chord.
    std::optional<double> percent_mac;
};

/// Sums items up, unrounded. Refuses no items, numbers that are none, a sum of weights that is not
/// above zero, and a chord without length.
///
/// The centre of gravity is moment over weight: FAA-H-8083-1, AC 43.13-1B chapter 10.
Result<Balance, Message> balance(std::span<const Item> items, std::optional<Chord> chord);

} // namespace lastrivet::balance
