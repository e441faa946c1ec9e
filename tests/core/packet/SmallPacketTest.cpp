// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packet/SmallPacket.h"

#include "core/readiness/Readiness.h"
#include "tests/support/WingProject.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace lastrivet;
using lastrivet::packet::Photo;
using lastrivet::test::WingProject;

namespace {

Photo photo(std::int64_t id, std::string_view day, std::string part,
            std::vector<RecordRef> subjects = {})
{
    Photo photo;
    photo.id = Id<Media>{id};
    photo.number = int(id);
    photo.taken_on = WingProject::at(day);
    photo.part = std::move(part);
    photo.subjects = std::move(subjects);
    return photo;
}

std::vector<int> numbers(const std::vector<Photo> &photos)
{
    std::vector<int> list;
    for (const Photo &photo : photos)
        list.push_back(photo.number);
    return list;
}

} // namespace

TEST_CASE("Signed sheets and pictures of squawks are missed most, then each part's newest")
{
    packet::Packet packet{.as_of = WingProject::at("2026-03-14")};
    packet.photos = {photo(1, "2026-01-01", "Rib 1"), photo(2, "2026-01-02", "Rib 1"),
                     photo(3, "2026-01-03", "Rib 1"), photo(4, "2025-12-01", "Rib 2"),
                     photo(5, "2025-11-01", "Rib 2", {{RecordType::Squawk, 7}})};
    packet.signed_sheets = {photo(6, "2026-02-01", "")};
    CHECK(numbers(packet::byImportance(packet)) == std::vector{6, 5, 3, 4, 2, 1});
}

TEST_CASE("What fits is taken in order, and a large picture leaves room to smaller ones behind it")
{
    const std::vector photos{photo(1, "2026-01-01", ""), photo(2, "2026-01-01", ""),
                             photo(3, "2026-01-01", "")};
    const auto ids = [](std::initializer_list<std::int64_t> list) {
        IdSet<Media> set;
        for (const auto id : list)
            set.emplace_back(id);
        return set;
    };
    CHECK(packet::fitting(photos, {50, 60, 40}, 150) == ids({1, 2, 3}));
    CHECK(packet::fitting(photos, {50, 60, 40}, 149) == ids({1, 2}));
    CHECK(packet::fitting(photos, {50, 60, 40}, 90) == ids({1, 3}));
    CHECK(packet::fitting(photos, {50, 60, 40}, 39).empty());
}

TEST_CASE("A reduced packet keeps the numbers of its photographs and says which are left out")
{
    const WingProject project;
    const auto answer = readiness::readiness(project.records, project.profile, project.as_of);
    const auto whole =
        packet::packetFor(project.records, project.profile, answer, {project.wingSkin});
    REQUIRE(whole.photos.size() == 3);
    CHECK_FALSE(whole.reduction);
    const auto small = packet::reduced(whole, {whole.photos[1].id}, 900);
    CHECK(numbers(small.photos) == std::vector{whole.photos[1].number});
    REQUIRE(small.reduction);
    CHECK(small.reduction->left_out == std::vector{whole.photos[0].number, whole.photos[2].number});
    CHECK(small.reduction->photos_in_all == 3);
    CHECK(small.reduction->longest_edge == 900);
}
