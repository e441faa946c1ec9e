// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Packet.h"
#include "core/packet/SquawkList.h"
#include "core/profiles/Profile.h"
#include "core/records/Records.h"

namespace lastrivet::test {

/// Records of an invented wing about to be closed, with a tail beside it that must stay out of its
/// packet; something of everything that a packet shows.
struct WingProject {
    WingProject();

    static Moment at(std::string_view text) { return *Moment::parse(text); }

    Records records;
    Profile profile;
    Moment as_of = at("2026-03-14");

    Id<Component> wing{1};
    Id<Component> rib{2};
    Id<Component> tank{3};
    Id<Component> tail{4};
    Id<Closing> wingSkin{1};
    Id<Closing> tankBaffle{2};
    Id<Closing> tailSkin{3};
    Id<HoldPoint> preCover{1};
    Id<Person> builder{1};
    Id<Person> helper{2};
    Id<Person> inspector{3};

private:
    void addPeople();
    void addParts();
    void addClosings();
    void addFindings();
    void addHardware();
    void addMaterials();
    void addWork();
    void addPhotos();
};

/// The packet of these closings, as of the project's day.
packet::Packet packetOf(const WingProject &project, const IdSet<Closing> &closings);
/// That of the wing's skin.
packet::Packet wingPacket(const WingProject &project);
/// The list of its squawks, as of the same day.
packet::SquawkList squawkListOf(const WingProject &project);

} // namespace lastrivet::test
