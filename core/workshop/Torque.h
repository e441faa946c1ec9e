// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/base/Result.h"
#include "core/base/Words.h"
#include "core/workshop/WorkshopTable.h"

namespace lastrivet::workshop {

/// How the nut loads the bolt: thick nuts in tension, thin ones in shear.
enum class Nut { Tension, Shear };

} // namespace lastrivet::workshop

template <> struct lastrivet::Words<lastrivet::workshop::Nut> {
    static constexpr std::array<std::string_view, 2> list{"tension", "shear"};
};

namespace lastrivet::workshop {

/// What to set a torque wrench to, in inch-pounds; the drag of the nut is in all three.
///
/// AC 43.13-1B (9/8/98) table 7-1: clean, dry, cadmium-plated threads without oil. The maker's
/// drawing comes first.
struct Torque {
    std::string thread;
    Nut nut = Nut::Tension;
    double minimum = 0;
    double maximum = 0;
    /// The most that the bolt may ever see; the table's last columns.
    double allowed_maximum = 0;
    double drag_added = 0;
    /// What the table itself remarks, in English; empty mostly.
    std::string remark;
    Source source;
};

/// The table's values for a thread ("1/4-28", "10-32"), with the drag that was read off the wrench
/// while the nut ran down, in inch-pounds. Says which threads there are when this is none of them,
/// and refuses a drag below zero or above the recommended maximum.
Result<Torque, Message> torque(std::string_view thread, Nut nut, double drag);

/// All threads of the table, fine ones first, by size.
std::vector<std::string> threads();

/// The least drag that a self-locking nut must still have, by one source.
struct PrevailingTorque {
    /// Which rule: reused nuts of the AC, the military breakaway table, or ground equipment.
    std::string basis;
    double minimum = 0;
    Source source;
};

/// What the sources say of a thread; they differ by a factor of about two. Empty when none does.
std::vector<PrevailingTorque> prevailingTorque(std::string_view thread);

} // namespace lastrivet::workshop
