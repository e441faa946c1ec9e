// SPDX-FileCopyrightText: The Lastrivet contributors
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/merge/PhotoIndex.h"

#include <catch2/catch.hpp>

using namespace lastrivet;

namespace {

/// Puts a photograph into the records and notes it.
void put(Records &records, merge::PhotoIndex &index, std::int64_t id, const std::string &file,
         const std::string &sum)
{
    Media media;
    media.id = Id<Media>{id};
    media.file = file;
    media.sha256 = sum;
    index.note(media);
    records.media.put(media);
}

} // namespace

TEST_CASE("Photographs are found by what they have now, the first by id of several")
{
    Records records;
    merge::PhotoIndex index;
    const auto withSum = [&](const std::string &sum, std::int64_t except = 0) {
        const Media *found = index.withSum(records, sum, except);
        return found ? found->id.value() : 0;
    };
    const auto withFile = [&](const std::string &file) {
        const Media *found = index.withFile(records, file);
        return found ? found->id.value() : 0;
    };
    put(records, index, 3, "a.jpg", "aa");
    put(records, index, 2, "a.jpg", "aa");
    CHECK(withSum("aa") == 2);
    CHECK(withSum("aa", 2) == 3);
    CHECK(withFile("a.jpg") == 2);
    CHECK(withFile("b.jpg") == 0);
    CHECK(withSum("bb") == 0);
    put(records, index, 2, "b.jpg", "bb");
    CHECK(withSum("aa") == 3);
    CHECK(withSum("bb") == 2);
    CHECK(withSum("bb", 2) == 0);
    CHECK(withFile("a.jpg") == 3);
    CHECK(withFile("b.jpg") == 2);
    Media withdrawn = *records.find(Id<Media>{3});
    withdrawn.withdrawn_on = Moment::parse("2026-03-14");
    records.media.put(withdrawn);
    CHECK(withSum("aa") == 0);
    CHECK(withFile("a.jpg") == 3);
    records.media.erase(3);
    CHECK(withSum("aa") == 0);
    CHECK(withFile("a.jpg") == 0);
}
