// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/Message.h"
#include "core/packet/BulletinEntry.h"
#include "core/packet/CheckList.h"
#include "core/packet/DeviationEntry.h"
#include "core/packet/FastenerEntry.h"
#include "core/packet/FrontPages.h"
#include "core/packet/MaterialEntry.h"
#include "core/packet/MeasurementEntry.h"
#include "core/packet/Photo.h"
#include "core/packet/SheetToSign.h"
#include "core/packet/SquawkEntry.h"
#include "core/packet/Standing.h"
#include "core/packet/ToolEntry.h"
#include "core/packet/WorkLog.h"
#include "core/profiles/Profile.h"
#include "core/readiness/Answer.h"
#include "core/records/Records.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace lastrivet::packet {

/// Everything an inspector needs to decide about a few closings, in the order in which he asks.
///
/// Can be made in any state, and says which. Nothing from beyond the reach of the closings is in
/// it, but for what their blockers name and for closings with gaps that nobody accepted yet.
struct Packet {
    /// What the version that is small enough to send goes without.
    struct Reduction {
        /// Of the pictures, in pixels; 0 when they are as in the whole packet.
        int longest_edge = 0;
        std::size_t photos_in_all = 0;
        /// Numbers of the photographs that are not in it, ascending.
        std::vector<int> left_out;
    };

    Message title;
    /// The worst state of the chosen closings.
    readiness::State state = readiness::State::Hold;
    /// False when it is that of a closing on which no work was begun.
    bool begun = true;
    Moment as_of;
    FrontPages front;
    std::vector<Standing> standings;
    /// Of the boxes inside, without their rules.
    std::vector<Standing> within{};
    std::vector<Photo> photos;
    std::vector<Photo> videos;
    std::vector<SquawkEntry> squawks;
    std::vector<DeviationEntry> deviations;
    std::vector<BulletinEntry> bulletins;
    std::vector<FastenerEntry> fasteners;
    std::vector<MeasurementEntry> measurements;
    std::vector<MaterialEntry> materials;
    std::vector<ToolEntry> tools;
    WorkLog work;
    std::vector<CheckList> check_lists;
    std::vector<SheetToSign> sheets;
    std::vector<Photo> signed_sheets;
    std::vector<Profile::Caution> cautions;
    std::optional<Reduction> reduction{};
};

/// The packet for the chosen closings, as of the moment of the answer; closings that the answer
/// does not know are left out.
Packet packetFor(const Records &records, const Profile &profile, const readiness::Answer &answer,
                 const IdSet<Closing> &chosen);

} // namespace lastrivet::packet
