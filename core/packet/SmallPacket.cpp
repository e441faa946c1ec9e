// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SmallPacket.h"

#include <algorithm>
#include <map>

namespace lastrivet::packet {

namespace {

bool isNamed(const Photo &photo)
{
    return std::any_of(photo.subjects.begin(), photo.subjects.end(), [](RecordRef subject) {
        return subject.type == RecordType::Squawk || subject.type == RecordType::Deviation ||
               subject.type == RecordType::Closing;
    });
}

/// Newest first; those without a date last.
bool isNewer(const Photo &a, const Photo &b)
{
    if (!a.taken_on || !b.taken_on)
        return a.taken_on.has_value() && !b.taken_on;
    return sortsBefore(*b.taken_on, *a.taken_on);
}

/// One of each part in turn, so that no part is left without.
void addInTurns(std::vector<Photo> &order, std::vector<Photo> photos)
{
    std::stable_sort(photos.begin(), photos.end(), isNewer);
    std::map<std::string, int> turns;
    std::vector<std::pair<int, const Photo *>> byTurn;
    for (const Photo &photo : photos)
        byTurn.emplace_back(turns[photo.part]++, &photo);
    std::stable_sort(byTurn.begin(), byTurn.end(),
                     [](const auto &a, const auto &b) { return a.first < b.first; });
    for (const auto &[turn, photo] : byTurn)
        order.push_back(*photo);
}

/// Drops what is not kept and answers the numbers of what went.
std::vector<int> dropOthers(std::vector<Photo> &photos, const IdSet<Media> &kept)
{
    std::vector<int> dropped;
    std::erase_if(photos, [&](const Photo &photo) {
        const bool goes = !std::binary_search(kept.begin(), kept.end(), photo.id);
        if (goes)
            dropped.push_back(photo.number);
        return goes;
    });
    return dropped;
}

} // namespace

std::vector<Photo> byImportance(const Packet &packet)
{
    std::vector<Photo> order = packet.signed_sheets;
    std::vector<Photo> others;
    for (const Photo &photo : packet.photos)
        (isNamed(photo) ? order : others).push_back(photo);
    addInTurns(order, std::move(others));
    return order;
}

IdSet<Media> fitting(const std::vector<Photo> &photos, const std::vector<std::uint64_t> &bytes,
                     std::uint64_t most)
{
    IdSet<Media> kept;
    std::uint64_t used = 0;
    for (std::size_t i = 0; i < photos.size(); ++i) {
        if (bytes[i] > most - used)
            continue;
        used += bytes[i];
        kept.push_back(photos[i].id);
    }
    std::sort(kept.begin(), kept.end());
    return kept;
}

Packet reduced(Packet packet, const IdSet<Media> &kept, int longestEdge)
{
    Packet::Reduction reduction;
    reduction.longest_edge = longestEdge;
    reduction.photos_in_all = packet.photos.size() + packet.signed_sheets.size();
    reduction.left_out = dropOthers(packet.photos, kept);
    const auto sheets = dropOthers(packet.signed_sheets, kept);
    reduction.left_out.insert(reduction.left_out.end(), sheets.begin(), sheets.end());
    packet.reduction = std::move(reduction);
    return packet;
}

} // namespace lastrivet::packet
