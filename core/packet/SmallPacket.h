// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packet/Packet.h"

#include <cstdint>
#include <vector>

namespace lastrivet::packet {

/// The photographs and signed sheets of a packet, those that can least be missed first: signed
/// sheets, what a squawk, deviation or closing names, then of each part the newest, of each part
/// the second newest, and so on.
std::vector<Photo> byImportance(const Packet &packet);

/// Those of `photos`, taken in their order, that fit into `most` bytes; `bytes` belong to them one
/// by one. A large one that does not fit makes no smaller one behind it go.
IdSet<Media> fitting(const std::vector<Photo> &photos, const std::vector<std::uint64_t> &bytes,
                     std::uint64_t most);

/// The same packet with only the photographs that are `kept`, which says what was left out. The
/// others keep their numbers. `longestEdge` in pixels is said, too; 0 when pictures are as they
/// were.
Packet reduced(Packet packet, const IdSet<Media> &kept, int longestEdge);

} // namespace lastrivet::packet
